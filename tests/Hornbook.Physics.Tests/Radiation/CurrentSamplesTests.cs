using System.Numerics;
using CsCheck;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation;

public static class CurrentSamplesTests
{
    public sealed class Constructor
    {
        [Fact]
        public void Refuses_lengths_that_differ() =>
            Assert.Contains("1 points, 2 electric and 1 magnetic", Assert.Throws<ArgumentException>(() =>
                new CurrentSamples([Vector.Zero], new ComplexVector[2], new ComplexVector[1])).Message, StringComparison.Ordinal);
    }

    public sealed class Kind
    {
        [Fact]
        public void Is_a_mouth_with_electric_currents_along_z_and_magnetic_ones_along_y_only()
        {
            Assert.Equal(CurrentKind.Mouth, RandomCurrents.Element(new ComplexVector(0, 0, 1), new ComplexVector(0, 1, 0)).Kind);
            Assert.Equal(CurrentKind.Any, RandomCurrents.Element(new ComplexVector(1e-9, 0, 1), new ComplexVector(0, 1, 0)).Kind);
            Assert.Equal(CurrentKind.Any, RandomCurrents.Element(default, new ComplexVector(1, 0, 0)).Kind);
            Assert.Equal(CurrentKind.Any, RandomCurrents.Element(default, new ComplexVector(0, 1, 1)).Kind);
        }

        [Fact]
        public void Is_electric_without_magnetic_currents()
        {
            Assert.Equal(CurrentKind.Electric, RandomCurrents.Element(new ComplexVector(0, 1, 0), default).Kind);
            Assert.Equal(CurrentKind.Any, RandomCurrents.Element(new ComplexVector(0, 1, 0), new ComplexVector(0, 0, 1e-9)).Kind);
        }
    }

    public sealed class Posed
    {
        [Fact]
        public void Turns_places_and_currents_alike()
        {
            // Convention C4: a turn of a quarter to the left takes own x to bench y, own y to bench −x.
            CurrentSamples own = new([new Vector(1.0, 0.0, 0.0)], [new ComplexVector(0, 1, 0)], [new ComplexVector(2, 0, 0)]);
            CurrentSamples posed = own.Posed(new Pose(new Vector(0.0, 0.0, 5.0), turn: Math.PI / 2));
            Close.Absolute(0.0, (posed.Points[0] - new Vector(0.0, 1.0, 5.0)).Length, 1e-15);
            Close.Relative(-1.0, posed.Electric[0].X.Real, 1e-15);
            Close.Relative(2.0, posed.Magnetic[0].Y.Real, 1e-15);
        }

        [Fact]
        public void Does_not_change_the_power() => RandomCurrents.InCube(Vector.Zero, 0.05, 20).Sample(currents =>
        {
            Pose pose = new(Vector.Zero, turn: 0.7, tilt: -0.4, roll: 1.9);
            Close.Relative(FarField.RadiatedPower(currents, 220.0), FarField.RadiatedPower(currents.Posed(pose), 220.0), 1e-9);
        },
        iter: 10);
    }

    public sealed class Scaled
    {
        [Fact]
        public void Multiplies_the_field() => RandomCurrents.InCube(Vector.Zero, 0.05, 20).Sample(currents =>
        {
            Complex factor = new(0.3, -2.0);
            Vector towards = new Vector(1.0, 2.0, -0.5).Unit;
            ComplexVector expected = FarField.At(currents, 220.0, towards) * factor;
            ComplexVector actual = FarField.At(currents.Scaled(factor), 220.0, towards);
            Close.Absolute(0.0, Math.Sqrt((actual + (expected * -1.0)).SquaredMagnitude / expected.SquaredMagnitude), 1e-13);
        },
        iter: 10);
    }
}
