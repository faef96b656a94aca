using CsCheck;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using MathNet.Numerics.Integration;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation;

/// <summary>Energy is conserved: the same power passes through every closed surface around the sources.</summary>
public sealed class RadiatedPowerTests
{
    private const double K = 220.0;

    [Fact]
    public void The_same_power_passes_through_two_spheres() => RandomCurrents.InCube(Vector.Zero, 0.012, 12).Sample(currents =>
        Close.Relative(ThroughSphere(currents, 0.08), ThroughSphere(currents, 0.5), 1e-9), iter: 10);

    [Fact]
    public void The_far_field_carries_the_power_that_passes_through_a_near_sphere() => RandomCurrents.InCube(Vector.Zero, 0.012, 12).Sample(currents =>
        Close.Relative(ThroughSphere(currents, 0.08), FarField.RadiatedPower(currents, K), 1e-9), iter: 10);

    [Fact]
    public void A_Hertzian_dipole_radiates_what_the_textbook_says()
    {
        // [Balanis2016] ch. 4: P = η (π/3) |I l/λ|² (peak current).
        const double Wavelength = 2.0 * Math.PI / K;
        double power = FarField.RadiatedPower(RandomCurrents.Element(new ComplexVector(0, 0, 1), default), K);
        Close.Relative(Constants.VacuumImpedance * Math.PI / 3.0 / (Wavelength * Wavelength), power, 1e-13);
    }

    // Gauss–Legendre in the cosine, equal steps around. Sources within a = 0.021 m have degrees up to ka = 4.6, and the evanescent
    // ones fall off as (a/r)^n; 30 nodes integrate products of degree 29.
    private static double ThroughSphere(CurrentSamples currents, double radius)
    {
        const int Around = 60;
        GaussLegendreRule polar = new(-1.0, 1.0, 30);
        FieldSample[] fields = new FieldSample[Around];
        double sum = 0.0;
        for (int i = 0; i < polar.Order; i++)
        {
            Vector[] normals = [.. Enumerable.Range(0, Around).Select(j => Direction(polar.Abscissas[i], 2.0 * Math.PI * j / Around))];
            RadiatedField.Evaluate(currents, K, Array.ConvertAll(normals, n => n * radius), fields);
            sum += polar.Weights[i] * fields.Zip(normals, (f, n) => Vector.Dot(f.PowerDensity, n)).Sum();
        }

        return sum * radius * radius * 2.0 * Math.PI / Around;
    }

    private static Vector Direction(double cosine, double around)
    {
        double sine = Math.Sqrt(1.0 - (cosine * cosine));
        return new Vector(sine * Math.Cos(around), sine * Math.Sin(around), cosine);
    }
}
