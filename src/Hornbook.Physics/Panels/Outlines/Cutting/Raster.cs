using NetTopologySuite.Geometries;

namespace Hornbook.Physics.Panels.Outlines.Cutting;

/// <summary>An even raster over a box.</summary>
/// <param name="Extent">The box; y and z as the library's x and y [m].</param>
/// <param name="Columns">Cells along y.</param>
/// <param name="Rows">Cells along z.</param>
internal sealed record Raster(Envelope Extent, int Columns, int Rows)
{
    /// <summary>Area of a whole cell [m²].</summary>
    internal double CellArea => Extent.Area / ((double)Columns * Rows);

    /// <summary>A raster whose cells have sides of at most the spacing.</summary>
    internal static Raster Over(Envelope extent, double spacing) =>
        new(extent, (int)Math.Ceiling(extent.Width / spacing), (int)Math.Ceiling(extent.Height / spacing));

    /// <summary>The box of a block of cells.</summary>
    internal Envelope Box(RasterBlock block) => new(Y(block.Left), Y(block.Right), Z(block.Bottom), Z(block.Top));

    // Ends are taken as they are: a rounding there would cut off a hair's breadth.
    private double Y(int column) => column == Columns ? Extent.MaxX : Extent.MinX + (Extent.Width * column / Columns);

    private double Z(int row) => row == Rows ? Extent.MaxY : Extent.MinY + (Extent.Height * row / Rows);
}
