using System.Numerics;
using Hornbook.Physics.Guides;
using MathNet.Numerics.Integration;

namespace Hornbook.Physics.Antennas;

/// <summary>An estimate of how much an antenna throws back into its guide.</summary>
internal static class FeedReflection
{
    /// <summary>|Γ| seen from the guide [-].</summary>
    internal static double Magnitude(AntennaShape shape, double frequency) => shape switch
    {
        Horn horn => Flare(horn, frequency).Magnitude,
        _ => OpenEndAdmittance.Reflection(shape.Guide, frequency).Magnitude,
    };

    /// <summary>Small reflections summed along the flare, Γ = ½∫ (d ln Z/dx) e^{−2jφ(x)} dx + Γ_mouth e^{−2jφ(L)}.</summary>
    /// <remarks>
    /// Z ∝ b/(aβ) is the wave impedance of TE10 times b/a (power-current form); first-order theory of a tapered line [Collin1992] ch. 5.
    /// The E-plane flare raises Z and the H-plane flare lowers it, so that a pyramid reflects less than either sectoral horn.
    /// Good to about a factor of two: a measured value in the bench file takes its place.
    /// </remarks>
    private static Complex Flare(Horn horn, double frequency)
    {
        double k = FreeSpace.Wavenumber(frequency);
        GaussLegendreRule rule = new(0.0, horn.Length, 32 + (int)Math.Ceiling(k * horn.Length));
        double slopeA = (horn.MouthWidth - horn.Guide.Width) / horn.Length;
        double slopeB = (horn.MouthHeight - horn.Guide.Height) / horn.Length;
        Complex sum = Complex.Zero;
        double phase = 0.0, previousX = 0.0, previousBeta = PhaseConstant(horn.Guide.Width, k);
        for (int i = 0; i < rule.Order; i++)
        {
            double x = rule.Abscissas[i];
            RectangularGuide section = horn.SectionAt(x);
            double beta = PhaseConstant(section.Width, k);
            phase += 0.5 * (beta + previousBeta) * (x - previousX);
            double ratio = Math.PI / (section.Width * beta);
            double logSlope = (slopeB / section.Height) - (slopeA / section.Width * (1.0 + (ratio * ratio)));
            sum += Complex.FromPolarCoordinates(0.5 * rule.Weights[i] * logSlope, -2.0 * phase);
            (previousX, previousBeta) = (x, beta);
        }

        double mouthBeta = PhaseConstant(horn.MouthWidth, k);
        phase += 0.5 * (mouthBeta + previousBeta) * (horn.Length - previousX);
        return sum + Complex.FromPolarCoordinates((mouthBeta - k) / (mouthBeta + k), -2.0 * phase);
    }

    private static double PhaseConstant(double width, double k) => Math.Sqrt((k * k) - Math.Pow(Math.PI / width, 2.0));
}
