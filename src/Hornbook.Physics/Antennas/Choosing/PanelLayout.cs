namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>How the four panels of a horn are nested on a sheet: in rows, every second panel turned end for end, so that slanted edges lie side by side.</summary>
/// <param name="Panels">The four, with the lower left corner of the sheet as origin.</param>
/// <param name="Width">Along the rows [m].</param>
/// <param name="Height">Across the rows [m].</param>
public sealed record PanelLayout(IReadOnlyList<PlacedPanel> Panels, double Width, double Height)
{
    /// <summary>All four panels in one row: top, side, bottom, side.</summary>
    /// <param name="horn">The horn.</param>
    /// <param name="seam">Strip on both slanted edges of top and bottom [m]; ≥ 0.</param>
    public static PanelLayout OneRow(Horn horn, double seam)
    {
        Panel broad = Panel.Broad(horn, seam), side = Panel.Side(horn);
        return Row([broad, side, broad, side], 0.0);
    }

    /// <summary>Top and bottom in one row, the two sides in another above it.</summary>
    /// <param name="horn">The horn.</param>
    /// <param name="seam">Strip on both slanted edges of top and bottom [m]; ≥ 0.</param>
    public static PanelLayout TwoRows(Horn horn, double seam)
    {
        Panel broad = Panel.Broad(horn, seam), side = Panel.Side(horn);
        PanelLayout lower = Row([broad, broad], 0.0), upper = Row([side, side], lower.Height);
        return new PanelLayout([.. lower.Panels, .. upper.Panels], Math.Max(lower.Width, upper.Width), lower.Height + upper.Height);
    }

    // Each panel goes as far to the left as those already placed allow.
    private static PanelLayout Row(ReadOnlySpan<Panel> panels, double foot)
    {
        List<PlacedPanel> placed = [];
        for (int i = 0; i < panels.Length; i++)
        {
            PlacedPanel next = new(panels[i], 0.0, foot, Turned: i % 2 == 1);
            double centre = 0.5 * panels[i].Mouth;
            foreach (PlacedPanel before in placed)
            {
                centre = Math.Max(centre, before.Centre + Apart(before, next));
            }

            placed.Add(next with { Centre = centre });
        }

        return new PanelLayout(placed, placed.Max(p => p.Centre + (0.5 * p.Panel.Mouth)), placed.Max(p => p.Panel.Height));
    }

    // Both edges are straight, so they are nearest at one end of the height that the panels share.
    private static double Apart(PlacedPanel left, PlacedPanel right)
    {
        double shared = Math.Min(left.Panel.Height, right.Panel.Height);
        return Math.Max(left.HalfWidth(0.0) + right.HalfWidth(0.0), left.HalfWidth(shared) + right.HalfWidth(shared));
    }
}
