namespace Hornbook.Physics.Panels.Outlines.Cutting;

/// <summary>A block of cells of a raster, by the numbers of the lines that bound it.</summary>
internal readonly record struct RasterBlock(int Left, int Right, int Bottom, int Top)
{
    internal bool IsCell => Right - Left == 1 && Top - Bottom == 1;

    /// <summary>The block cut in two across its longer side.</summary>
    internal (RasterBlock First, RasterBlock Second) Halves()
    {
        int column = (Left + Right) / 2, row = (Bottom + Top) / 2;
        return Right - Left >= Top - Bottom
            ? (this with { Right = column }, this with { Left = column })
            : (this with { Top = row }, this with { Bottom = row });
    }
}
