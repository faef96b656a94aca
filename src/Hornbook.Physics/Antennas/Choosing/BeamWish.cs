using Hornbook.Physics.Antennas.ClosedForm;
using MathNet.Numerics.RootFinding;

namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>Finds the horn for two beam widths.</summary>
internal static class BeamWish
{
    private const double OptimumLagE = 0.25;
    private const double OptimumLagH = 0.375;

    // Past the optimum the beam still narrows with the mouth, down to a lag of 0.36 in the E plane and 0.45 in the H plane.
    private const double MostLagE = 0.34;
    private const double MostLagH = 0.44;

    internal static HornChoice Choose(Feed feed, double widthE, double widthH)
    {
        double longest = HornWish.LongestInWaves * feed.Wavelength;
        double lengthE = OptimumLength(feed.Guide.Height, widthE, LineTaper.Uniform, OptimumLagE, feed.Wavelength);
        double lengthH = OptimumLength(feed.Guide.Width, widthH, LineTaper.Cosine, OptimumLagH, feed.Wavelength);
        if (lengthE > longest)
        {
            return HornChoice.Refused(WishProblem.BeamTooNarrowE, widthE, Narrowest(feed, longest).HalfPowerWidthE ?? Math.PI);
        }

        if (lengthH > longest)
        {
            return HornChoice.Refused(WishProblem.BeamTooNarrowH, widthH, Narrowest(feed, longest).HalfPowerWidthH ?? Math.PI);
        }

        double length = Math.Max(HornWish.ShortestInWaves * feed.Wavelength, Math.Max(lengthE, lengthH));
        return AtLength(feed, widthE, widthH, length);
    }

    // The width in the H plane does not depend on the mouth's height, so one plane is solved after the other.
    private static HornChoice AtLength(Feed feed, double widthE, double widthH, double length)
    {
        double area = feed.Wavelength * length;
        double WidthH(double mouthWidth) => new SeparableMouth(feed.Horn(mouthWidth, feed.Guide.Height, length), feed.Frequency).HalfPowerWidthH ?? Math.PI;
        double narrowH = feed.Guide.Width, wideH = OptimumMouth.Side(narrowH, MostLagH, area);
        if (WidthH(narrowH) < widthH)
        {
            return HornChoice.Refused(WishProblem.BeamTooWideH, widthH, WidthH(narrowH));
        }

        double mouthWidth = Brent.FindRoot(side => WidthH(side) - widthH, narrowH, wideH, 1e-12, 200);
        double WidthE(double mouthHeight) => new SeparableMouth(feed.Horn(mouthWidth, mouthHeight, length), feed.Frequency).HalfPowerWidthE ?? Math.PI;
        double narrowE = feed.Guide.Height, wideE = OptimumMouth.Side(narrowE, MostLagE, area);
        if (WidthE(narrowE) < widthE)
        {
            return HornChoice.Refused(WishProblem.BeamTooWideE, widthE, WidthE(narrowE));
        }

        double mouthHeight = Brent.FindRoot(side => WidthE(side) - widthE, narrowE, wideE, 1e-12, 200);
        return HornChoice.Found(HornFigures.Of(feed.Horn(mouthWidth, mouthHeight, length), feed.Frequency));
    }

    // Length at which a plane has its width and its optimum lag at once, from the closed form: 8λL q = D(D − d).
    private static double OptimumLength(double throat, double width, LineTaper taper, double lag, double wavelength)
    {
        double side = new PhasedLine(taper, lag).HalfPowerWidth!.Value * wavelength / (2.0 * Math.Sin(0.5 * width));
        return side <= throat ? 0.0 : side * (side - throat) / (8.0 * wavelength * lag);
    }

    private static HornFigures Narrowest(Feed feed, double length)
    {
        double area = feed.Wavelength * length;
        return HornFigures.Of(
            feed.Horn(OptimumMouth.Side(feed.Guide.Width, OptimumLagH, area), OptimumMouth.Side(feed.Guide.Height, OptimumLagE, area), length),
            feed.Frequency);
    }
}
