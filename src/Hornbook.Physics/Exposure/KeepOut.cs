using Hornbook.Physics.Antennas;
using MathNet.Numerics.RootFinding;

namespace Hornbook.Physics.Exposure;

/// <summary>How far to stay away: the outermost distance from the centre of the mouth at which the density equals a limit.</summary>
/// <remarks>
/// Outermost, because near a mouth the density rises and falls with distance. The search comes inwards from a distance where
/// the density is certainly lower, in steps of an eighth of a wavelength or two per cent. It ends a quarter of a wavelength from the
/// mouth: where the limit is met only closer still, that last distance is given, and 0 where it is met nowhere.
/// </remarks>
public static class KeepOut
{
    private const int Batch = 32;
    private const double RelativeStep = 0.02;

    /// <summary>On the axis [m].</summary>
    /// <param name="field">The field of the source at its worst-case power.</param>
    /// <param name="density">The limit [W/m²]; finite, &gt; 0.</param>
    public static double OnAxis(ExposureField field, double density) => Towards(field, density, Vector.UnitX);

    /// <summary>In a direction of the antenna's own frame [m].</summary>
    /// <param name="field">The field of the source at its worst-case power.</param>
    /// <param name="density">The limit [W/m²]; finite, &gt; 0.</param>
    /// <param name="direction">Own frame; any length but 0.</param>
    /// <remarks>
    /// Beyond <see cref="FarPattern.TrustedAngle"/> off the axis the currents over the mouth say too little (what runs round the rim is
    /// missing): there the answer is never less than at that angle.
    /// </remarks>
    public static double Towards(ExposureField field, double density, Vector direction)
    {
        ArgumentNullException.ThrowIfNull(field);
        Require.Positive(density);
        Vector unit = direction.Unit;
        double far = field.DistanceOfCertainty(density);
        double outward = Outermost(field, density, unit, far);
        return unit.X >= Math.Cos(FarPattern.TrustedAngle)
            ? outward
            : Math.Max(outward, Outermost(field, density, AtTrustedAngle(unit), far));
    }

    /// <summary>All round in a plane that holds the axis, for drawing.</summary>
    /// <param name="field">The field of the source at its worst-case power.</param>
    /// <param name="density">The limit [W/m²]; finite, &gt; 0.</param>
    /// <param name="plane">The plane.</param>
    /// <param name="points">How many directions, evenly spaced from the axis round; ≥ 4.</param>
    public static IReadOnlyList<KeepOutPoint> Contour(ExposureField field, double density, PatternPlane plane, int points)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(points, 4);
        KeepOutPoint[] contour = new KeepOutPoint[points];
        for (int i = 0; i < points; i++)
        {
            double angle = 2.0 * Math.PI * i / points;
            contour[i] = new KeepOutPoint(angle, Towards(field, density, Direction(plane, angle)));
        }

        return contour;
    }

    /// <summary>The largest over directions on a grid of 3° over the quarter of space that the others mirror [m].</summary>
    /// <param name="field">The field of the source at its worst-case power.</param>
    /// <param name="density">The limit [W/m²]; finite, &gt; 0.</param>
    public static double Largest(ExposureField field, double density)
    {
        const double Step = Math.PI / 60.0;
        double largest = OnAxis(field, density);
        for (double off = Step; off <= FarPattern.TrustedAngle + 1e-9; off += Step)
        {
            for (double azimuth = 0.0; azimuth <= (0.5 * Math.PI) + 1e-9; azimuth += Math.PI / 12.0)
            {
                largest = Math.Max(largest, Towards(field, density, OffAxis(off, azimuth)));
            }
        }

        return largest;
    }

    // Batches of places from outside in; the first batch that holds a place above the limit holds the crossing.
    private static double Outermost(ExposureField field, double density, Vector unit, double far)
    {
        Span<Vector> places = stackalloc Vector[Batch];
        Span<double> densities = stackalloc double[Batch];
        double outside = far, next = far;
        while (true)
        {
            int count = 0;
            while (count < Batch && next > 0.0 && field.DistanceFromMouth(unit * next) >= field.ClosestDistance)
            {
                places[count++] = unit * next;
                next -= Math.Max(0.125 * field.Antenna.Wavelength, RelativeStep * next);
            }

            if (count == 0)
            {
                return field.AtMouth >= density ? outside : 0.0;
            }

            field.Densities(places[..count], densities);
            for (int i = 0; i < count; i++)
            {
                double distance = places[i].Length;
                if (densities[i] >= density)
                {
                    return Crossing(field, density, unit, distance, outside);
                }

                outside = distance;
            }
        }
    }

    private static double Crossing(ExposureField field, double density, Vector unit, double inside, double outside) =>
        Brent.FindRoot(r => Math.Log(field.Density(unit * r) / density), inside, outside, 1e-9, 100);

    private static Vector Direction(PatternPlane plane, double angle) => plane switch
    {
        PatternPlane.Magnetic => OffAxis(angle, 0.0),
        PatternPlane.Electric => OffAxis(angle, 0.5 * Math.PI),
        _ => OffAxis(angle, 0.25 * Math.PI),
    };

    private static Vector OffAxis(double off, double azimuth) =>
        new(Math.Cos(off), Math.Sin(off) * Math.Cos(azimuth), Math.Sin(off) * Math.Sin(azimuth));

    // Straight behind, where the azimuth means nothing, Atan2 gives the plane of the magnetic field.
    private static Vector AtTrustedAngle(Vector unit) => OffAxis(FarPattern.TrustedAngle, Math.Atan2(unit.Z, unit.Y));
}
