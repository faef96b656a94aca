namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>How the four walls of a horn are nested on a sheet: in rows, every second wall turned end for end, so that slanted edges lie side by side.</summary>
/// <param name="Walls">The four, with the lower left corner of the sheet as origin.</param>
/// <param name="Width">Along the rows [m].</param>
/// <param name="Height">Across the rows [m].</param>
public sealed record WallLayout(IReadOnlyList<PlacedWall> Walls, double Width, double Height)
{
    /// <summary>All four walls in one row: top, side, bottom, side.</summary>
    /// <param name="horn">The horn.</param>
    /// <param name="seam">Strip on both slanted edges of top and bottom [m]; ≥ 0.</param>
    public static WallLayout OneRow(Horn horn, double seam)
    {
        HornWall broad = HornWall.Broad(horn, seam), side = HornWall.Side(horn);
        return Row([broad, side, broad, side], 0.0);
    }

    /// <summary>Top and bottom in one row, the two sides in another above it.</summary>
    /// <param name="horn">The horn.</param>
    /// <param name="seam">Strip on both slanted edges of top and bottom [m]; ≥ 0.</param>
    public static WallLayout TwoRows(Horn horn, double seam)
    {
        HornWall broad = HornWall.Broad(horn, seam), side = HornWall.Side(horn);
        WallLayout lower = Row([broad, broad], 0.0), upper = Row([side, side], lower.Height);
        return new WallLayout([.. lower.Walls, .. upper.Walls], Math.Max(lower.Width, upper.Width), lower.Height + upper.Height);
    }

    // Each wall goes as far to the left as those already placed allow.
    private static WallLayout Row(ReadOnlySpan<HornWall> walls, double foot)
    {
        List<PlacedWall> placed = [];
        for (int i = 0; i < walls.Length; i++)
        {
            PlacedWall next = new(walls[i], 0.0, foot, Turned: i % 2 == 1);
            double centre = 0.5 * walls[i].Mouth;
            foreach (PlacedWall before in placed)
            {
                centre = Math.Max(centre, before.Centre + Apart(before, next));
            }

            placed.Add(next with { Centre = centre });
        }

        return new WallLayout(placed, placed.Max(p => p.Centre + (0.5 * p.Wall.Mouth)), placed.Max(p => p.Wall.Height));
    }

    // Both edges are straight, so they are nearest at one end of the height that the walls share.
    private static double Apart(PlacedWall left, PlacedWall right)
    {
        double shared = Math.Min(left.Wall.Height, right.Wall.Height);
        return Math.Max(left.HalfWidth(0.0) + right.HalfWidth(0.0), left.HalfWidth(shared) + right.HalfWidth(shared));
    }
}
