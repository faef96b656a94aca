namespace Hornbook.Physics.Panels.Outlines.Cutting;

/// <summary>A narrow ring that is divided evenly into sectors.</summary>
/// <remarks>Eq. outlines (2).</remarks>
/// <param name="Inner">Inner radius [m].</param>
/// <param name="Outer">Outer radius [m].</param>
/// <param name="Count">How many sectors.</param>
internal readonly record struct RingSector(double Inner, double Outer, int Count)
{
    // Where a disc is divided to its centre, sectors that are too broad have their centre of area far from their points.
    private const int FewestSectors = 3;

    /// <summary>The full angle of a sector [rad].</summary>
    internal double Angle => Math.Tau / Count;

    /// <summary>The directions of the middles of the sectors [rad].</summary>
    internal IEnumerable<double> Directions
    {
        get
        {
            double angle = Angle;
            return Enumerable.Range(0, Count).Select(i => (i + 0.5) * angle);
        }
    }

    /// <summary>The distance of a sector's centre of area from the centre of the circles [m]: (2/3)(b³ − a³)/(b² − a²) sin(α/2)/(α/2).</summary>
    internal double CentreRadius
    {
        get
        {
            double a = Inner, b = Outer, half = 0.5 * Angle;
            return 2.0 / 3.0 * ((a * a) + (a * b) + (b * b)) / (a + b) * Math.Sin(half) / half;
        }
    }

    /// <summary>Divides a ring into sectors.</summary>
    /// <param name="inner">Inner radius [m].</param>
    /// <param name="outer">Outer radius [m].</param>
    /// <param name="step">The largest side outwards [m].</param>
    /// <param name="spacing">The largest outer side of a sector [m].</param>
    internal static IEnumerable<RingSector> Divide(double inner, double outer, double step, double spacing)
    {
        int rings = (int)Math.Ceiling((outer - inner) / step);
        double breadth = (outer - inner) / rings;
        return Enumerable.Range(0, rings).Select(i => Of(inner + (i * breadth), inner + ((i + 1) * breadth), spacing));
    }

    private static RingSector Of(double inner, double outer, double spacing) =>
        new(inner, outer, Math.Max(FewestSectors, (int)Math.Ceiling(Math.Tau * outer / spacing)));
}
