using System.Numerics;
using Hornbook.Physics.Guides;
using MathNet.Numerics.Integration;

namespace Hornbook.Physics.Antennas;

/// <summary>The admittance that the open end of a guide offers to its own TE10 wave.</summary>
/// <remarks>
/// One-mode variational form with the plane-wave spectrum of the mouth field, Eq. antennas (4): the end stands in a large metal
/// flange ([Lewin1951]; [Harrington1961] § 4-11). A bare WR-90 end with walls of 1.27 mm reflects a little more, about 0.27 at
/// 10.5 GHz by a full-wave computation where this gives 0.24: 0.06 dB of gain.
/// </remarks>
internal static class OpenEndAdmittance
{
    private const int AnglePoints = 32;

    // Beyond kt = k cosh(5) = 74 k less than 1 % of the susceptance is left for guides of the standard shape.
    private const double LargestCosine = 5.0;
    private const int EvanescentPieces = 20;
    private const int PointsPerPiece = 16;

    private static readonly GaussLegendreRule Azimuth = new(0.0, 0.5 * Math.PI, AnglePoints);

    /// <summary>Complex reflection of TE10 at the open end [-].</summary>
    /// <param name="guide">The guide; frequency above its cut-off.</param>
    /// <param name="frequency">Frequency [Hz].</param>
    internal static Complex Reflection(RectangularGuide guide, double frequency)
    {
        Complex relative = OverVacuum(guide, frequency) / guide.RelativePhaseConstant(frequency);
        return (1.0 - relative) / (1.0 + relative);
    }

    /// <summary>Mouth admittance times the impedance of vacuum, η Y [-].</summary>
    internal static Complex OverVacuum(RectangularGuide guide, double frequency)
    {
        double k = FreeSpace.Wavenumber(frequency);
        GaussLegendreRule visible = new(0.0, 0.5 * Math.PI, AnglePoints);
        Complex sum = Complex.Zero;
        for (int i = 0; i < visible.Order; i++)
        {
            double sine = Math.Sin(visible.Abscissas[i]);
            sum += visible.Weights[i] * sine * Ring(guide, k, k * sine);
        }

        for (int piece = 0; piece < EvanescentPieces; piece++)
        {
            double step = LargestCosine / EvanescentPieces;
            GaussLegendreRule rule = new(piece * step, (piece + 1) * step, PointsPerPiece);
            for (int i = 0; i < rule.Order; i++)
            {
                double cosh = Math.Cosh(rule.Abscissas[i]);
                sum += new Complex(0.0, rule.Weights[i] * cosh * Ring(guide, k, k * cosh));
            }
        }

        // Over the norm of the mode, ∫cos²(πy/a) dS = ab/2, and (2π)² of the spectrum.
        return sum / (2.0 * Math.PI * Math.PI * guide.Width * guide.Height);
    }

    // Over all azimuths: |Ẽ(ky,kz)|² (k² − ky²), for a mouth field along z.
    private static double Ring(RectangularGuide guide, double k, double transverse)
    {
        double sum = 0.0;
        for (int i = 0; i < Azimuth.Order; i++)
        {
            (double sine, double cosine) = Math.SinCos(Azimuth.Abscissas[i]);
            double ky = transverse * cosine;
            double spectrum = CosineSpectrum(guide.Width, ky) * UniformSpectrum(guide.Height, transverse * sine);
            sum += Azimuth.Weights[i] * spectrum * spectrum * ((k * k) - (ky * ky));
        }

        return 4.0 * sum;
    }

    // ∫cos(πy/a) e^{jky} dy over the width.
    private static double CosineSpectrum(double width, double ky)
    {
        double x = 0.5 * ky * width;
        double denominator = (0.25 * Math.PI * Math.PI) - (x * x);
        return Math.Abs(denominator) < 1e-9 ? 0.5 * width : 0.5 * Math.PI * width * Math.Cos(x) / denominator;
    }

    private static double UniformSpectrum(double height, double kz) => height * MathNet.Numerics.Trig.Sinc(0.5 * kz * height / Math.PI);
}
