namespace Hornbook.Physics.Panels.Outlines;

/// <summary>A circular arc of a rim in a flat sheet: the edge of a disc, or of a round hole.</summary>
/// <remarks>Eq. outlines (1). From a disc the perpendicular is followed to the nearer end of the diameter, so that its centre has no foot.</remarks>
internal sealed class ArcRim : Rim
{
    private readonly Vector _centre;
    private readonly double _radius;
    private readonly double _start;
    private readonly double _sweep;
    private readonly bool _sheetInside;

    /// <summary>An arc from an angle onwards; angles from own y towards own z [rad], 0 &lt; sweep ≤ 2π.</summary>
    internal ArcRim(Vector centre, double radius, double start, double sweep, bool sheetInside)
    {
        _centre = centre;
        _radius = radius;
        _start = start;
        _sweep = sweep;
        _sheetInside = sheetInside;
    }

    /// <inheritdoc/>
    public override double Length => _radius * _sweep;

    /// <inheritdoc/>
    public override RimFoot? Foot(Vector point)
    {
        Vector offset = point - _centre;
        double r = offset.Length;
        double distance = _sheetInside ? _radius - r : r - _radius;
        if (!(r > 0.0 && distance > 0.0 && Covers(offset)))
        {
            return null;
        }

        Vector outward = offset.Unit;
        return new RimFoot(_centre + (outward * _radius), _sheetInside ? outward * -1.0 : outward, Vector.UnitX, distance);
    }

    private bool Covers(Vector offset)
    {
        double turns = (Math.Atan2(offset.Z, offset.Y) - _start) / Math.Tau;
        return (turns - Math.Floor(turns)) * Math.Tau < _sweep || _sweep >= Math.Tau;
    }
}
