namespace Hornbook.Physics.Panels.Outlines.Shapes;

/// <summary>A step in the making of a flat panel.</summary>
/// <param name="Shape">The figure.</param>
/// <param name="IsSheet">Whether there is sheet in it after this step, or an opening.</param>
public sealed record Piece(Shape Shape, bool IsSheet)
{
    /// <summary>Adds a figure.</summary>
    public static Piece Added(Shape shape) => new(shape, IsSheet: true);

    /// <summary>Takes a figure away.</summary>
    public static Piece Removed(Shape shape) => new(shape, IsSheet: false);
}
