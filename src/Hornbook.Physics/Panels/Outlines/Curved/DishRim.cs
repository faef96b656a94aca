namespace Hornbook.Physics.Panels.Outlines.Curved;

/// <summary>The edge of a dish, or of the hole in its middle; distances along the sheet.</summary>
internal sealed class DishRim : Rim
{
    private readonly Paraboloid _paraboloid;
    private readonly double _radius;
    private readonly bool _sheetInside;

    internal DishRim(Paraboloid paraboloid, double radius, bool sheetInside)
    {
        _paraboloid = paraboloid;
        _radius = radius;
        _sheetInside = sheetInside;
    }

    /// <inheritdoc/>
    public override double Length => Math.Tau * _radius;

    /// <inheritdoc/>
    public override RimFoot? Foot(Vector point)
    {
        double radius = Math.Sqrt((point.Y * point.Y) + (point.Z * point.Z));
        double inside = _paraboloid.Way(_radius) - _paraboloid.Way(radius);
        double distance = _sheetInside ? inside : -inside;
        if (!(radius > 0.0 && distance > 0.0))
        {
            return null;
        }

        Vector place = _paraboloid.At(_radius, Math.Atan2(point.Z, point.Y));
        return new RimFoot(place, _paraboloid.Outward(place) * (_sheetInside ? -1.0 : 1.0), _paraboloid.Normal(place), distance);
    }
}
