namespace Hornbook.Physics.Panels.Outlines.Cutting;

/// <summary>Cells in the plane x = 0.</summary>
internal static class FlatCell
{
    internal static Cell At(double y, double z, double area) => new(new Vector(0.0, y, z), Vector.UnitX, Vector.UnitY, area);

    /// <summary>A rectangle in even rows, no side of a cell longer than the spacing.</summary>
    internal static IEnumerable<Cell> Rectangle((double From, double To) y, (double From, double To) z, double spacing)
    {
        int across = (int)Math.Ceiling((y.To - y.From) / spacing), along = (int)Math.Ceiling((z.To - z.From) / spacing);
        double width = (y.To - y.From) / across, height = (z.To - z.From) / along;
        return
            from j in Enumerable.Range(0, along)
            from i in Enumerable.Range(0, across)
            select At(y.From + ((i + 0.5) * width), z.From + ((j + 0.5) * height), width * height);
    }
}
