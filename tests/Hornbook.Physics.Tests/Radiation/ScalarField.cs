using System.Numerics;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Tests.Radiation;

/// <summary>The formula of the field written as the textbook has it, one pair at a time: what the kernel must equal.</summary>
internal static class ScalarField
{
    internal static FieldSample At(CurrentSamples currents, double k, Vector point)
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
            Complex direct = -jkg * (1.0 + q + (q * q));
            Complex radial = jkg * (1.0 + (3.0 * q) + (3.0 * q * q));
            Complex curl = jkg * (1.0 + q);
            ComplexVector j = currents.Electric[s] * Eta;
            ComplexVector m = currents.Magnetic[s];
            e += (j * direct) + ComplexVector.Along(d, radial * j.Component(d)) + (ComplexVector.Cross(d, m) * curl);
            etaH += (m * direct) + ComplexVector.Along(d, radial * m.Component(d)) + (ComplexVector.Cross(d, j) * -curl);
        }

        return new FieldSample(e, etaH * (1.0 / Eta));
    }
}
