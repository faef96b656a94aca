using Hornbook.Physics.Antennas.ClosedForm;
using MathNet.Numerics.RootFinding;

namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>Finds the horn for two beam widths.</summary>
internal static class BeamWish
{
    private const double OptimumLagE = 0.25;
    private const double OptimumLagH = 0.375;

    // Past the optimum the beam still narrows with the mouth, down to a lag of 0.36 in the E plane and 0.45 in the H plane; where the throat is nearly as wide as the mouth, it does so
    // to a smaller lag only, since little more width brings much more of it.
    private const double MostLagE = 0.34;
    private const double MostLagH = 0.44;
    private const int LagsTried = 12;

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
        if (WidthH(feed.Guide.Width) < widthH)
        {
            return HornChoice.Refused(WishProblem.BeamTooWideH, widthH, WidthH(feed.Guide.Width));
        }

        double mouthWidth = Side(WidthH, widthH, feed.Guide.Width, MostLagH, area);
        double WidthE(double mouthHeight) => new SeparableMouth(feed.Horn(mouthWidth, mouthHeight, length), feed.Frequency).HalfPowerWidthE ?? Math.PI;
        if (WidthE(feed.Guide.Height) < widthE)
        {
            return HornChoice.Refused(WishProblem.BeamTooWideE, widthE, WidthE(feed.Guide.Height));
        }

        double mouthHeight = Side(WidthE, widthE, feed.Guide.Height, MostLagE, area);
        return HornChoice.Found(HornFigures.Of(feed.Horn(mouthWidth, mouthHeight, length), feed.Frequency));
    }

    // From the throat to the side with the narrowest beam this narrows; the length is such that the wish lies between them, but for a rounding.
    private static double Side(Func<double, double> widthOf, double wish, double throat, double mostLag, double area)
    {
        double narrowest = Enumerable.Range(1, LagsTried).Select(i => OptimumMouth.Side(throat, mostLag * i / LagsTried, area)).MinBy(widthOf);
        return widthOf(narrowest) >= wish ? narrowest : Brent.FindRoot(side => widthOf(side) - wish, throat, narrowest, 1e-12, 200);
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
