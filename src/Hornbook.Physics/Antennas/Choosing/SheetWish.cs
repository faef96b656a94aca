using Hornbook.Physics.Antennas.ClosedForm;

namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>Finds the best horn that a sheet yields.</summary>
internal static class SheetWish
{
    // A search over mouths from coarse to fine: the best mouth lies on the edge of what fits, where a gradient is of no use.
    private const int GridSteps = 16;
    private const int Rounds = 11;
    private const double ShortestInWaves = 0.5;
    private const double MostLag = 1.0;

    private enum Nesting
    {
        OneRow,
        TwoRows,
    }

    internal static HornChoice Choose(Feed feed, MetalSheet sheet)
    {
        Candidate[] best =
        [
            .. from nesting in Enum.GetValues<Nesting>()
               from space in new[] { (Along: sheet.Width, Across: sheet.Length), (Along: sheet.Length, Across: sheet.Width) }
               let candidate = Best(feed, sheet.Seam, nesting, space.Along, space.Across)
               where candidate is not null
               orderby candidate.Gain descending
               select candidate
        ];
        double strip = (2.0 * (feed.Guide.Width + feed.Guide.Height)) + (4.0 * sheet.Seam);
        return best.Length == 0
            ? HornChoice.Refused(WishProblem.SheetTooSmall, Math.Max(sheet.Width, sheet.Length), strip)
            : HornChoice.Found(HornFigures.Of(best[0].Horn, feed.Frequency), best[0].Layout);
    }

    private static Candidate? Best(Feed feed, double seam, Nesting nesting, double along, double across)
    {
        double lowA = feed.Guide.Width, highA = Widest(feed, lowA, along), lowB = feed.Guide.Height, highB = Widest(feed, lowB, along);
        Candidate? best = null;
        for (int round = 0; round < Rounds; round++)
        {
            double stepA = (highA - lowA) / GridSteps, stepB = (highB - lowB) / GridSteps;
            for (int i = 0; i <= GridSteps; i++)
            {
                for (int j = 0; j <= GridSteps; j++)
                {
                    Candidate? candidate = Longest(feed, seam, nesting, along, across, lowA + (i * stepA), lowB + (j * stepB));
                    best = candidate?.Gain > (best?.Gain ?? 0.0) ? candidate : best;
                }
            }

            if (best is null)
            {
                return null;
            }

            (lowA, highA) = Around(best.Horn.MouthWidth, stepA, feed.Guide.Width);
            (lowB, highB) = Around(best.Horn.MouthHeight, stepB, feed.Guide.Height);
        }

        return best;
    }

    // No side of a mouth is longer than the sheet, nor than the longest horn can use.
    private static double Widest(Feed feed, double throat, double along) => Math.Max(
        throat, Math.Min(along, OptimumMouth.Side(throat, MostLag, HornWish.LongestInWaves * feed.Wavelength * feed.Wavelength)));

    private static (double Low, double High) Around(double side, double step, double throat)
    {
        double reach = 0.25 * GridSteps * step;
        return (Math.Max(throat, side - reach), side + reach);
    }

    // For a given mouth the longest horn is the best one: less lag, and nothing else changes.
    private static Candidate? Longest(Feed feed, double seam, Nesting nesting, double along, double across, double mouthWidth, double mouthHeight)
    {
        double halfA = 0.5 * (mouthWidth - feed.Guide.Width), halfB = 0.5 * (mouthHeight - feed.Guide.Height);
        double squared = nesting == Nesting.OneRow
            ? (across * across) - Math.Max(halfA * halfA, halfB * halfB)
            : TwoRowLengthSquared(across, halfA, halfB);
        double length = Math.Min(Math.Sqrt(Math.Max(0.0, squared)), HornWish.LongestInWaves * feed.Wavelength);
        if (length < ShortestInWaves * feed.Wavelength)
        {
            return null;
        }

        Horn horn = feed.Horn(mouthWidth, mouthHeight, length);
        WallLayout layout = nesting == Nesting.OneRow ? WallLayout.OneRow(horn, seam) : WallLayout.TwoRows(horn, seam);
        return layout.Width <= along ? new Candidate(horn, layout, Gain(feed, horn)) : null;
    }

    // √(L² + halfB²) + √(L² + halfA²) = across, solved for L².
    private static double TwoRowLengthSquared(double across, double halfA, double halfB)
    {
        double slant = ((across * across) + (halfA * halfA) - (halfB * halfB)) / (2.0 * across);
        return slant <= 0.0 || slant >= across ? 0.0 : (slant * slant) - (halfA * halfA);
    }

    // Closed form: good enough to rank, and fast. A flare with more lag than a wave is never the best.
    private static double Gain(Feed feed, Horn horn)
    {
        FlaredMouth mouth = FlaredMouth.Of(horn);
        double lagE = mouth.Height * mouth.Height / (8.0 * feed.Wavelength * mouth.RadiusE);
        double lagH = mouth.Width * mouth.Width / (8.0 * feed.Wavelength * mouth.RadiusH);
        return lagE > MostLag || lagH > MostLag ? 0.0 : mouth.Directivity(feed.Wavelength);
    }

    private sealed record Candidate(Horn Horn, WallLayout Layout, double Gain);
}
