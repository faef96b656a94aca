namespace Hornbook.Physics.Panels.Outlines.Curved;

/// <summary>A rim of a flat sheet that was rolled on a cylinder; distances along the sheet.</summary>
internal sealed class RolledRim : Rim
{
    private readonly Rim _flat;
    private readonly Cylinder _cylinder;

    internal RolledRim(Rim flat, Cylinder cylinder)
    {
        _flat = flat;
        _cylinder = cylinder;
    }

    /// <inheritdoc/>
    public override double Length => _flat.Length;

    /// <inheritdoc/>
    internal override bool IsStraight => _flat.IsStraight;

    /// <inheritdoc/>
    public override RimFoot? Foot(Vector point) => _flat.Foot(_cylinder.Unrolled(point)) is { } foot
        ? new RimFoot(
            _cylinder.Rolled(foot.Place), _cylinder.Turned(foot.Place, foot.Inward), _cylinder.Turned(foot.Place, foot.Normal), foot.Distance)
        : null;
}
