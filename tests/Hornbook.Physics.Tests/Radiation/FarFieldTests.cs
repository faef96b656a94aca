using System.Numerics;
using CsCheck;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation;

public sealed class FarFieldTests
{
    private static readonly Gen<Vector> Points =
        Gen.Select(Gen.Double[-0.1, 0.1], Gen.Double[-0.1, 0.1], Gen.Double[-0.1, 0.1], (x, y, z) => new Vector(x, y, z));

    private static readonly Gen<Complex> Amplitudes = Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], (re, im) => new Complex(re, im));

    private static readonly Gen<ComplexVector> Phasors = Gen.Select(Amplitudes, Amplitudes, Amplitudes, (x, y, z) => new ComplexVector(x, y, z));

    private static readonly Gen<CurrentSamples> Currents = Gen.Select(Points.Array[7], Phasors.Array[7], Phasors.Array[7])
        .Select((points, electric, magnetic) => new CurrentSamples(points, electric, magnetic));

    [Fact]
    public void It_is_the_exact_field_a_long_way_off() =>
        Gen.Select(Currents, Points.Where(p => p.Length > 0.01)).Sample(
            (currents, towards) =>
            {
                const double Distance = 1e4, Wavenumber = 200.0;
                Vector direction = towards.Unit;
                FieldSample[] near = new FieldSample[1];
                RadiatedField.Evaluate(currents, Wavenumber, [direction * Distance], near);
                ComplexVector expected = near[0].Electric * Complex.FromPolarCoordinates(Distance, Wavenumber * Distance);
                ComplexVector far = FarField.At(currents, Wavenumber, direction);
                // Derived: what is left out falls as k a²/2R = 2e-4 of the field of the strongest of the sources.
                double scale = Wavenumber * Constants.VacuumImpedance / 4.0;
                Close.Absolute(0.0, Math.Sqrt((far + (expected * -1.0)).SquaredMagnitude) / scale, 2e-3);
            },
            iter: 50);

    [Fact]
    public void Many_directions_at_once_give_what_each_alone_gives() =>
        Gen.Select(Currents, Points.Where(p => p.Length > 0.01).Array[1, 19]).Sample(
            (currents, towards) =>
            {
                Vector[] directions = Array.ConvertAll(towards, p => p.Unit);
                ComplexVector[] fields = new ComplexVector[directions.Length];
                FarField.Evaluate(currents, 200.0, directions, fields);
                for (int i = 0; i < fields.Length; i++)
                {
                    Assert.Equal(FarField.At(currents, 200.0, directions[i]), fields[i]);
                }
            },
            iter: 50);

    [Fact]
    public void A_short_dipole_radiates_what_the_textbook_says()
    {
        // Balanis, Antenna Theory, ch. 4: P = η π/3 (I l/λ)²; directivity 3/2.
        CurrentSamples dipole = new([Vector.Zero], [new ComplexVector(0.0, 0.0, 1.0)], [default]);
        double wavenumber = 2.0 * Math.PI / 0.03;
        double power = FarField.RadiatedPower(dipole, wavenumber);
        Close.Relative(Constants.VacuumImpedance * Math.PI / 3.0 / (0.03 * 0.03), power, 1e-12);
        Close.Relative(1.5, 4.0 * Math.PI * FarField.Intensity(dipole, wavenumber, new Vector(1.0, 0.0, 0.0)) / power, 1e-12);
    }

    [Fact]
    public void Too_little_room_is_refused() =>
        Assert.Throws<ArgumentException>(() => FarField.Evaluate(
            new CurrentSamples([Vector.Zero], [default], [default]), 1.0, [Vector.Zero, Vector.Zero], new ComplexVector[1]));
}
