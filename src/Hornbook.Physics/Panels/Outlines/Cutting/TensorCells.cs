using Hornbook.Physics.Panels.Outlines.Boundaries;

namespace Hornbook.Physics.Panels.Outlines.Cutting;

/// <summary>Cells of a region whose sides are all upright or level: every side lies on a line of the raster, so that no cell is cut.</summary>
internal static class TensorCells
{
    /// <summary>The cells, or null where a side is oblique or round.</summary>
    internal static IReadOnlyList<Cell>? Of(Region region, BoundaryPiece[] boundary, double spacing)
    {
        if (!Array.TrueForAll(boundary, piece => piece.Stroke is LineStroke && IsFlush(piece, region.Tolerance)))
        {
            return null;
        }

        BoundaryPiece[] upright = Array.FindAll(boundary, piece => piece.Box.Height > piece.Box.Width);
        BoundaryPiece[] level = Array.FindAll(boundary, piece => piece.Box.Height <= piece.Box.Width);
        double[] ys = Distinct(upright.Select(piece => piece.Middle.Y), region.Tolerance);
        double[] zs = Distinct(level.Select(piece => piece.Middle.Z), region.Tolerance);
        List<Cell> cells = [];
        for (int j = 1; j < zs.Length; j++)
        {
            for (int i = 1; i < ys.Length; i++)
            {
                if (region.Contains(new Vector(0.0, 0.5 * (ys[i - 1] + ys[i]), 0.5 * (zs[j - 1] + zs[j]))))
                {
                    cells.AddRange(FlatCell.Rectangle((ys[i - 1], ys[i]), (zs[j - 1], zs[j]), spacing));
                }
            }
        }

        return cells;
    }

    private static bool IsFlush(BoundaryPiece piece, double tolerance) => Math.Min(piece.Box.Width, piece.Box.Height) <= tolerance;

    private static double[] Distinct(IEnumerable<double> places, double tolerance)
    {
        List<double> distinct = [];
        foreach (double place in places.Order().Where(place => distinct.Count == 0 || place - distinct[^1] > tolerance))
        {
            distinct.Add(place);
        }

        return [.. distinct];
    }
}
