using System.Numerics;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation;

public static class ComplexVectorTests
{
    private static readonly ComplexVector Sample = new(new Complex(1, 2), new Complex(-3, 0.5), new Complex(0, -1));

    public sealed class PowerDensity
    {
        [Fact]
        public void Of_a_plane_wave_is_half_the_square_of_the_peak_field_over_the_impedance()
        {
            // Convention C5, derived: E = 3 V/m along z, H = E/η along −y travels along +x with 9/2η.
            FieldSample wave = new(new ComplexVector(0, 0, 3), new ComplexVector(0, -3 / Constants.VacuumImpedance, 0));
            Close.Relative(4.5 / Constants.VacuumImpedance, wave.PowerDensity.X, 1e-15);
            Assert.Equal((0.0, 0.0), (wave.PowerDensity.Y, wave.PowerDensity.Z));
        }

        [Fact]
        public void Is_nothing_where_the_fields_are_a_quarter_period_apart() =>
            Assert.Equal(Vector.Zero, ComplexVector.PowerDensity(new ComplexVector(0, 0, 3), new ComplexVector(0, new Complex(0, 1), 0)));
    }

    public sealed class Cross
    {
        [Fact]
        public void Is_right_handed() =>
            Assert.Equal(new ComplexVector(0, 0, new Complex(0, 2)), ComplexVector.Cross(new Vector(1, 0, 0), new ComplexVector(0, new Complex(0, 2), 0)));

        [Fact]
        public void Has_no_part_along_the_direction()
        {
            Vector direction = new(0.3, -0.4, 0.5);
            Close.Absolute(0.0, ComplexVector.Cross(direction, Sample).Component(direction).Magnitude, 1e-15);
        }
    }

    public sealed class Dot
    {
        [Fact]
        public void Does_not_conjugate() =>
            // Derived: j·j + 1·2 = 1.
            Assert.Equal(Complex.One, ComplexVector.Dot(new ComplexVector(Complex.ImaginaryOne, 1, 0), new ComplexVector(Complex.ImaginaryOne, 2, 0)));
    }

    public sealed class Rotated
    {
        [Fact]
        public void Keeps_the_magnitude_and_turns_as_the_pose_does()
        {
            Pose pose = new(new Vector(1, 2, 3), turn: 0.7, tilt: -0.4, roll: 1.9);
            ComplexVector turned = Sample.Rotated(pose);
            Close.Relative(Sample.SquaredMagnitude, turned.SquaredMagnitude, 1e-14);
            Close.Absolute(0.0, (turned.Component(pose.Left) - Sample.Y).Magnitude, 1e-15);
        }
    }
}
