using System.Numerics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Exposure;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Tests.Radiation;

namespace Hornbook.Physics.Tests.Exposure;

/// <summary>Power density of a horn the slow way: its mouth cut into equal cells, their fields by the textbook's formula one by one.</summary>
internal static class EqualCells
{
    private const int Cells = 120;

    /// <summary>The density at a place, for a power in the guide; the norm is the intensity on the axis, given by the directivity.</summary>
    internal static double Density(Antenna antenna, double incidentPower, Vector place)
    {
        CurrentSamples mouth = Mouth((Horn)antenna.Shape, antenna.Wavenumber);
        FieldSample far = ScalarField.At(mouth, antenna.Wavenumber, new Vector(1e5, 0.0, 0.0));
        double intensity = 1e10 * PowerDensity.Equivalent(far);
        double radiated = incidentPower * antenna.MismatchEfficiency * antenna.OhmicEfficiency;
        double scale = radiated * antenna.Directivity / (4.0 * Math.PI * intensity);
        return scale * PowerDensity.Equivalent(ScalarField.At(mouth, antenna.Wavenumber, place));
    }

    // E_z = cos(πy/A) exp(−jk[√(ρ_H²+y²) − ρ_H + √(ρ_E²+z²) − ρ_E]), M = ŷ E_z, J = −ẑ E_z β/kη, in the middle of each cell.
    private static CurrentSamples Mouth(Horn horn, double k)
    {
        Vector[] points = new Vector[Cells * Cells];
        ComplexVector[] electric = new ComplexVector[points.Length], magnetic = new ComplexVector[points.Length];
        double admittance = Math.Sqrt(1.0 - Math.Pow(Math.PI / (k * horn.MouthWidth), 2.0)) / Constants.VacuumImpedance;
        double area = horn.MouthWidth * horn.MouthHeight / (Cells * Cells);
        for (int i = 0; i < points.Length; i++)
        {
            double y = ((((i % Cells) + 0.5) / Cells) - 0.5) * horn.MouthWidth;
            double z = ((((i / Cells) + 0.5) / Cells) - 0.5) * horn.MouthHeight;
            double path = Math.Sqrt((horn.AxialRadiusH * horn.AxialRadiusH) + (y * y)) - horn.AxialRadiusH
                + Math.Sqrt((horn.AxialRadiusE * horn.AxialRadiusE) + (z * z)) - horn.AxialRadiusE;
            Complex field = Complex.FromPolarCoordinates(area * Math.Cos(Math.PI * y / horn.MouthWidth), -k * path);
            points[i] = new Vector(0.0, y, z);
            electric[i] = new ComplexVector(Complex.Zero, Complex.Zero, -admittance * field);
            magnetic[i] = new ComplexVector(Complex.Zero, field, Complex.Zero);
        }

        return new CurrentSamples(points, electric, magnetic);
    }
}
