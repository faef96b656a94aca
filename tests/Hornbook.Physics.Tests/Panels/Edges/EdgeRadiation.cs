using System.Numerics;
using Hornbook.Physics.Radiation;
using MathNet.Numerics.Integration;

namespace Hornbook.Physics.Tests.Panels.Edges;

/// <summary>Amplitudes of the cylindrical wave e^{−jk_t ρ}/√ρ from a rim: of currents, by quadrature, and of the exact solution.</summary>
internal static class EdgeRadiation
{
    /// <summary>E_z and H_z of 2 n×H and the fringe current together.</summary>
    public static (Complex Electric, Complex Magnetic) Of(PlaneWave wave, double wavenumber, double azimuth, Func<double, ComplexVector> fringe)
    {
        double kt = wavenumber * Math.Sin(wave.Beta), towards = kt * (Math.Cos(azimuth) + Math.Cos(wave.Arrival));
        ComplexVector optics = ComplexVector.Cross(new Vector(0.0, 1.0, 0.0), wave.Field.Magnetic) * new Complex(0.0, 2.0 / towards);
        return Of(wave.Beta, wavenumber, azimuth, optics, fringe);
    }

    /// <summary>E_z and H_z of a current along and across a rim, and of one whose transform is known.</summary>
    public static (Complex Electric, Complex Magnetic) Of(double beta, double wavenumber, double azimuth, ComplexVector known, Func<double, ComplexVector> current)
    {
        double kt = wavenumber * Math.Sin(beta), kz = wavenumber * Math.Cos(beta), towards = kt * Math.Cos(azimuth);
        Complex across = known.X + Transform(x => current(x).X, kt, towards), along = known.Z + Transform(x => current(x).Z, kt, towards);

        // A = −(j/4) H0(kρ) ∗ J; E_z = (k_t² A_z − j k_z ∂A_x/∂x)/jωε, H_z = −∂A_x/∂y (Harrington 1961, chapter 3, from memory).
        Complex cylinder = new Complex(0.0, -0.25) * Complex.Sqrt(new Complex(0.0, 2.0 / (Math.PI * kt)));
        Complex electric = ((kt * kt * along) - (kz * towards * across)) * cylinder * Constants.VacuumImpedance / new Complex(0.0, wavenumber);
        return (electric, new Complex(0.0, kt * Math.Sin(azimuth)) * cylinder * across);
    }

    /// <summary>E_z and H_z of the exact solution.</summary>
    public static (Complex Electric, Complex Magnetic) Exact(PlaneWave wave, double wavenumber, double azimuth)
    {
        double kt = wavenumber * Math.Sin(wave.Beta);
        return (wave.Field.Electric.Z * Diffraction(kt, azimuth, wave.Arrival, -1.0), wave.Field.Magnetic.Z * Diffraction(kt, azimuth, wave.Arrival, 1.0));
    }

    /// <summary>The exact amplitude for a wave of amplitude one, E_z (−1) or H_z (+1).</summary>
    /// <remarks>Born and Wolf, Principles of Optics, 7th ed. 1999, § 11.5; Keller 1962 (both from memory): −e^{−jπ/4}/(2√(2πk_t)) [1/cos((φ−φ0)/2) ∓ 1/cos((φ+φ0)/2)].</remarks>
    public static Complex Diffraction(double kt, double azimuth, double arrival, double imageSign) =>
        Complex.FromPolarCoordinates(-0.5 / Math.Sqrt(2.0 * Math.PI * kt), -0.25 * Math.PI)
        * ((1.0 / Math.Cos(0.5 * (azimuth - arrival))) + (imageSign / Math.Cos(0.5 * (azimuth + arrival))));

    // ∫₀^∞ f(x) e^{j towards x} dx, ended smoothly between 40 and 160 wavelengths, in √x, where the integrand is not singular.
    private static Complex Transform(Func<double, Complex> current, double kt, double towards)
    {
        const int Pieces = 400;
        double wavelength = 2.0 * Math.PI / kt, start = 40.0 * wavelength, end = 160.0 * wavelength, step = Math.Sqrt(end) / Pieces;
        Complex sum = 0.0;
        for (int i = 0; i < Pieces; i++)
        {
            sum += GaussLegendreRule.ContourIntegrate(
                root =>
                {
                    double x = root * root;
                    double share = Math.Clamp((x - start) / (end - start), 0.0, 1.0), window = Math.Cos(0.5 * Math.PI * share);
                    return current(x) * Complex.FromPolarCoordinates(2.0 * root * window * window, towards * x);
                },
                i * step, (i + 1) * step, 12);
        }

        return sum;
    }
}
