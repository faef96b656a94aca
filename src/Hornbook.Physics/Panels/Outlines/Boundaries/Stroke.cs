using NetTopologySuite.Geometries;

namespace Hornbook.Physics.Panels.Outlines.Boundaries;

/// <summary>A line in the plane of a panel that may bound it: a side of a figure, or a circle. Places on it by the way s from its start [m].</summary>
internal abstract class Stroke
{
    /// <summary>Length [m].</summary>
    internal abstract double Length { get; }

    /// <summary>Whether its end is its start.</summary>
    internal abstract bool IsClosed { get; }

    /// <summary>The place at a way.</summary>
    internal abstract Vector At(double way);

    /// <summary>Unit vector to the left of one who walks along it and looks against +x: the inside of a circle.</summary>
    internal abstract Vector Left(double way);

    /// <summary>The way to a point, where the point lies on the line.</summary>
    /// <param name="point">A point of the plane [m].</param>
    /// <param name="tolerance">Distance that counts as none [m].</param>
    internal abstract double? WayTo(Vector point, double tolerance);

    /// <summary>A part of it as a rim.</summary>
    internal abstract Rim ToRim(double from, double to, bool sheetOnLeft);

    /// <summary>The smallest upright box around a part of it.</summary>
    internal abstract Envelope Box(double from, double to);
}
