using NetTopologySuite.Geometries;

namespace Hornbook.Physics.Panels.Outlines.Boundaries;

/// <summary>A part of a stroke that has the sheet on one side only.</summary>
/// <param name="Stroke">The stroke.</param>
/// <param name="From">Way to its start [m].</param>
/// <param name="To">Way to its end [m], more than the start; beyond the stroke's length where the start of a circle lies between.</param>
/// <param name="SheetOnLeft">The side.</param>
internal readonly record struct BoundaryPiece(Stroke Stroke, double From, double To, bool SheetOnLeft)
{
    internal Vector Middle => Stroke.At(0.5 * (From + To));

    internal Envelope Box => Stroke.Box(From, To);

    internal Rim ToRim() => Stroke.ToRim(From, To, SheetOnLeft);
}
