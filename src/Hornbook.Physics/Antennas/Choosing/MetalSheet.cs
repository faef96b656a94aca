namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>A rectangular sheet from which a horn is to be cut.</summary>
public sealed record MetalSheet
{
    /// <summary>A sheet.</summary>
    /// <param name="width">One side [m]; finite, &gt; 0.</param>
    /// <param name="length">The other side [m]; finite, &gt; 0. Which is which does not matter.</param>
    /// <param name="seam">Strip left on both slanted edges of the top and bottom walls, to be bent over the side walls and soldered or riveted [m]; ≥ 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is out of its range.</exception>
    public MetalSheet(double width, double length, double seam)
    {
        Width = Require.Positive(width);
        Length = Require.Positive(length);
        Seam = Require.NotNegative(seam);
    }

    /// <summary>One side [m].</summary>
    public double Width { get; }

    /// <summary>The other side [m].</summary>
    public double Length { get; }

    /// <summary>Strip left on both slanted edges of the top and bottom walls [m].</summary>
    public double Seam { get; }
}
