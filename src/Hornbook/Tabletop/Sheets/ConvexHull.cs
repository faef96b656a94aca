namespace Hornbook.Tabletop.Sheets;

/// <summary>The outline of a convex body from the corners that are seen of it.</summary>
public static class ConvexHull
{
    /// <summary>The corners of the hull in order round it (Andrew's monotone chain, 1979).</summary>
    public static IReadOnlyList<SheetPoint> Of(IReadOnlyList<SheetPoint> points)
    {
        SheetPoint[] sorted = [.. points.Distinct().OrderBy(p => p.X).ThenBy(p => p.Y)];
        return sorted.Length < 3 ? sorted : [.. Chain(sorted), .. Chain(sorted.Reverse())];
    }

    private static List<SheetPoint> Chain(IEnumerable<SheetPoint> ordered)
    {
        List<SheetPoint> chain = [];
        foreach (SheetPoint p in ordered)
        {
            while (chain.Count >= 2 && Side(chain[^2], chain[^1], p) <= 0.0)
            {
                chain.RemoveAt(chain.Count - 1);
            }

            chain.Add(p);
        }

        chain.RemoveAt(chain.Count - 1); // the other chain begins with it
        return chain;
    }

    private static double Side(SheetPoint a, SheetPoint b, SheetPoint c) =>
        ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
}
