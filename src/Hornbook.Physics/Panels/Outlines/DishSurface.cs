using System.Globalization;
using Hornbook.Physics.Panels.Outlines.Curved;
using Hornbook.Physics.Panels.Outlines.Cutting;

namespace Hornbook.Physics.Panels.Outlines;

/// <summary>A dish: a paraboloid of revolution about own x, hollow in front, the middle of its back at the origin. Immutable.</summary>
/// <remarks>Its focus lies at (f, 0, 0). Eq. outlines (5), (6).</remarks>
public sealed class DishSurface : PanelSurface
{
    private const int LoopCorners = 180;

    private readonly Paraboloid _paraboloid;
    private readonly double[] _radii;

    /// <summary>A dish.</summary>
    /// <param name="diameter">Of its edge [m]; finite, &gt; 0.</param>
    /// <param name="focalLength">f [m]; finite, &gt; 0.</param>
    /// <param name="holeDiameter">Of a round hole in its middle [m]; 0 for none; less than that of the edge.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public DishSurface(double diameter, double focalLength, double holeDiameter = 0.0)
    {
        Width = Require.Positive(diameter);
        _paraboloid = new Paraboloid(Require.Positive(focalLength));
        if (Require.NotNegative(holeDiameter) >= diameter)
        {
            throw new ArgumentOutOfRangeException(nameof(holeDiameter), holeDiameter, string.Create(
                CultureInfo.InvariantCulture, $"holeDiameter = {holeDiameter}; must be less than the diameter, {diameter} m"));
        }

        _radii = [0.5 * holeDiameter, 0.5 * diameter];
        double[] edges = holeDiameter > 0.0 ? [_radii[1], _radii[0]] : [_radii[1]];
        Rims = Array.ConvertAll(edges, radius => new DishRim(_paraboloid, radius, radius == _radii[1]));
        Loops = Array.ConvertAll(edges, Loop);
    }

    /// <inheritdoc/>
    public override double Width { get; }

    /// <inheritdoc/>
    public override double Height => Width;

    /// <summary>From the origin to the focus, f [m].</summary>
    public double FocalLength => _paraboloid.FocalLength;

    /// <inheritdoc/>
    public override bool IsFlat => false;

    /// <inheritdoc/>
    public override IReadOnlyList<Rim> Rims { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<IReadOnlyList<Vector>> Loops { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<Cell> Cells(double spacing)
    {
        // Even steps in radius are longest, along the surface, at the edge.
        double step = Require.Positive(spacing) / _paraboloid.Stretch(_radii[1]);
        List<Cell> cells = [];
        foreach (RingSector sector in RingSector.Divide(_radii[0], _radii[1], step, spacing))
        {
            double area = (_paraboloid.Area(sector.Outer) - _paraboloid.Area(sector.Inner)) / sector.Count;
            cells.AddRange(sector.Directions.Select(direction => _paraboloid.Cell(_paraboloid.At(sector.CentreRadius, direction), area)));
        }

        return cells;
    }

    private IReadOnlyList<Vector> Loop(double radius) =>
        [.. Enumerable.Range(0, LoopCorners).Select(i => _paraboloid.At(radius, Math.Tau * i / LoopCorners))];
}
