using System.Numerics;

namespace Hornbook.Physics.Radiation;

/// <summary>The exact field of sampled currents in free space, every near-zone term included.</summary>
public static class RadiatedField
{
    /// <summary>E and H of the currents at points.</summary>
    /// <param name="currents">Sources.</param>
    /// <param name="wavenumber">k = 2π/λ [1/m]; finite, &gt; 0.</param>
    /// <param name="points">Observers [m], length n; none may lie on a source.</param>
    /// <param name="fields">Filled with the fields, length n.</param>
    /// <remarks>
    /// With R = r−r', g = e^{−jkR}/(4πR), the free-space dyadic Green function (Harrington 1961, ch. 3; [Balanis2016] ch. 6):
    /// E = −jkη[(1 + 1/(jkR) − 1/(kR)²) J − (1 + 3/(jkR) − 3/(kR)²)(J·R̂)R̂] g + jk(1 + 1/(jkR)) (R̂×M) g and by duality
    /// η H = −jk[…M…] g − jk(1 + 1/(jkR)) (R̂×ηJ) g.
    /// </remarks>
    public static void Evaluate(CurrentSamples currents, double wavenumber, ReadOnlySpan<Vector> points, Span<FieldSample> fields)
    {
        ArgumentNullException.ThrowIfNull(currents);
        for (int i = 0; i < points.Length; i++)
        {
            fields[i] = At(currents, wavenumber, points[i]);
        }
    }

    private static FieldSample At(CurrentSamples currents, double k, Vector point)
    {
        const double Eta = Constants.VacuumImpedance;
        ComplexVector e = default, etaH = default;
        for (int s = 0; s < currents.Count; s++)
        {
            Vector d = point - currents.Points[s];
            double r = d.Length;
            d *= 1.0 / r;
            Complex jkg = Complex.ImaginaryOne * k * Complex.FromPolarCoordinates(1.0 / (4.0 * Math.PI * r), -k * r);
            Complex q = new(0.0, -1.0 / (k * r)); // 1/(jkR)
            Complex transverse = -jkg * (1.0 + q + (q * q));
            Complex radial = jkg * (1.0 + (3.0 * q) + (3.0 * q * q));
            Complex curl = jkg * (1.0 + q);
            ComplexVector j = currents.Electric[s] * Eta;
            ComplexVector m = currents.Magnetic[s];
            e += (j * transverse) + ComplexVector.Along(d, radial * j.Component(d)) + (ComplexVector.Cross(d, m) * curl);
            etaH += (m * transverse) + ComplexVector.Along(d, radial * m.Component(d)) + (ComplexVector.Cross(d, j) * -curl);
        }

        return new FieldSample(e, etaH * (1.0 / Eta));
    }
}
