namespace Hornbook.Physics.Panels.Outlines;

/// <summary>A straight piece of a rim in a flat sheet.</summary>
internal sealed class StraightRim : Rim
{
    private readonly Vector _start;
    private readonly Vector _tangent;
    private readonly Vector _inward;

    /// <summary>A piece with the sheet to its left for one who looks against the normal and walks from start to end.</summary>
    internal StraightRim(Vector start, Vector end)
    {
        _start = start;
        _tangent = (end - start).Unit;
        _inward = Vector.Cross(Vector.UnitX, _tangent);
        Length = (end - start).Length;
    }

    /// <inheritdoc/>
    public override double Length { get; }

    /// <inheritdoc/>
    internal override bool IsStraight => true;

    /// <inheritdoc/>
    public override RimFoot? Foot(Vector point)
    {
        Vector offset = point - _start;
        double along = Vector.Dot(offset, _tangent);
        double distance = Vector.Dot(offset, _inward);

        // Of two pieces that go on in line, only one is met where they join.
        return along >= 0.0 && along < Length && distance > 0.0
            ? new RimFoot(_start + (_tangent * along), _inward, Vector.UnitX, distance)
            : null;
    }
}
