namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>How smooth the fields of the samples of two boxes are in each other's box, once the phases to the centres are taken out.</summary>
/// <remarks>
/// Eq. radiation (12). Along a direction u in the first box the phase k(|r−r'| − |r−c'|) of a source r' runs with k u·(R̂(r,r') − R̂(r,c')). Its largest
/// value in the middle of the box, and its largest change from there, are looked for with r and r' in the centres and the corners.
/// </remarks>
internal static class BoxView
{
    private const int MostSpots = 9;

    // Two boxes are convex: going to and fro between the nearest points of either ends at the shortest way. A few times is enough.
    private const int Passes = 4;

    /// <summary>Nodes in both boxes; none where the boxes are too near for any.</summary>
    internal static (BoxGrid First, BoxGrid Second)? Grids(SampleBox first, Frame firstAxes, SampleBox second, Frame secondAxes, double wavenumber, double digits)
    {
        double distance = Distance(first, firstAxes, second, secondAxes);
        if (!(distance > 0.2 * Math.Min(Largest(first.Half), Largest(second.Half))))
        {
            return null;
        }

        Span<Vector> a = stackalloc Vector[MostSpots], b = stackalloc Vector[MostSpots];
        a = a[..Spots(first, firstAxes, a)];
        b = b[..Spots(second, secondAxes, b)];
        Span<Vector> ways = stackalloc Vector[a.Length * b.Length];
        for (int i = 0; i < ways.Length; i++)
        {
            ways[i] = (a[i / b.Length] - b[i % b.Length]).Unit;
        }

        PhaseRun runFirst = default, runSecond = default;
        for (int i = 0; i < a.Length; i++)
        {
            for (int j = 0; j < b.Length; j++)
            {
                runFirst = runFirst.With(firstAxes, ways[j] - ways[0], ways[(i * b.Length) + j] - ways[i * b.Length]);
                runSecond = runSecond.With(secondAxes, ways[i * b.Length] - ways[0], ways[(i * b.Length) + j] - ways[j]);
            }
        }

        return Grid(first.Half, runFirst, wavenumber, distance, digits) is BoxGrid f && Grid(second.Half, runSecond, wavenumber, distance, digits) is BoxGrid s
            ? (f, s)
            : null;
    }

    private static double Largest(Vector v) => Math.Max(v.X, Math.Max(v.Y, v.Z));

    private static BoxGrid? Grid(Vector half, PhaseRun run, double wavenumber, double distance, double digits) =>
        Smoothness.Nodes(wavenumber * run.Steady.X * half.X, wavenumber * run.Bent.X * half.X, distance / half.X, digits) is int x
        && Smoothness.Nodes(wavenumber * run.Steady.Y * half.Y, wavenumber * run.Bent.Y * half.Y, distance / half.Y, digits) is int y
        && Smoothness.Nodes(wavenumber * run.Steady.Z * half.Z, wavenumber * run.Bent.Z * half.Z, distance / half.Z, digits) is int z
            ? new BoxGrid(x, y, z)
            : null;

    /// <summary>The centre and the corners, which are fewer where a side has no length.</summary>
    private static int Spots(SampleBox box, Frame axes, Span<Vector> spots)
    {
        Vector x = axes.Forward * box.Half.X, y = axes.Left * box.Half.Y, z = axes.Up * box.Half.Z;
        spots[0] = box.Place;
        int count = 1;
        for (int corner = 0; corner < 8; corner++)
        {
            bool twin = (box.Half.X == 0.0 && (corner & 1) != 0) || (box.Half.Y == 0.0 && (corner & 2) != 0) || (box.Half.Z == 0.0 && (corner & 4) != 0);
            if (!twin)
            {
                spots[count++] = box.Place + (x * Side(corner & 1)) + (y * Side(corner & 2)) + (z * Side(corner & 4));
            }
        }

        return count;
    }

    private static double Side(int bit) => bit == 0 ? -1.0 : 1.0;

    private static double Distance(SampleBox first, Frame firstAxes, SampleBox second, Frame secondAxes)
    {
        Vector there = second.Place, here = first.Place;
        for (int pass = 0; pass < Passes; pass++)
        {
            here = Nearest(first, firstAxes, there);
            there = Nearest(second, secondAxes, here);
        }

        return (there - here).Length;
    }

    private static Vector Nearest(SampleBox box, Frame axes, Vector point)
    {
        Vector way = point - box.Place;
        return box.Place
            + (axes.Forward * Math.Clamp(Vector.Dot(way, axes.Forward), -box.Half.X, box.Half.X))
            + (axes.Left * Math.Clamp(Vector.Dot(way, axes.Left), -box.Half.Y, box.Half.Y))
            + (axes.Up * Math.Clamp(Vector.Dot(way, axes.Up), -box.Half.Z, box.Half.Z));
    }
}
