namespace Hornbook.Physics.Panels.Outlines;

/// <summary>A flat rectangle without openings.</summary>
public sealed class RectangularSurface : PanelSurface
{
    private static readonly Vector Front = new(1.0, 0.0, 0.0);
    private static readonly Vector Left = new(0.0, 1.0, 0.0);

    /// <summary>A rectangle about the origin.</summary>
    /// <param name="width">Along its own y [m]; finite, &gt; 0.</param>
    /// <param name="height">Along its own z [m]; finite, &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is out of its range.</exception>
    public RectangularSurface(double width, double height)
    {
        Width = Require.Positive(width);
        Height = Require.Positive(height);
        Vector[] corners = [Corner(-0.5, -0.5), Corner(0.5, -0.5), Corner(0.5, 0.5), Corner(-0.5, 0.5)];
        Rims = [.. corners.Select((corner, i) => new StraightRim(corner, corners[(i + 1) % 4], Front))];
        Loops = [corners];
    }

    /// <inheritdoc/>
    public override double Width { get; }

    /// <inheritdoc/>
    public override double Height { get; }

    /// <inheritdoc/>
    public override bool IsFlat => true;

    /// <inheritdoc/>
    public override IReadOnlyList<Rim> Rims { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<IReadOnlyList<Vector>> Loops { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<Cell> Cells(double spacing)
    {
        Require.Positive(spacing);
        int across = (int)Math.Ceiling(Width / spacing), along = (int)Math.Ceiling(Height / spacing);
        double area = Width * Height / ((double)across * along);
        return
        [
            .. from j in Enumerable.Range(0, along)
               from i in Enumerable.Range(0, across)
               select new Cell(Corner(((i + 0.5) / across) - 0.5, ((j + 0.5) / along) - 0.5), Front, Left, area)
        ];
    }

    private Vector Corner(double y, double z) => new(0.0, y * Width, z * Height);
}
