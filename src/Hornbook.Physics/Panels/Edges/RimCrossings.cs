using Hornbook.Physics.Panels.Outlines;

namespace Hornbook.Physics.Panels.Edges;

/// <summary>Finds which feet face each other, over the sheet or through the air of a slit.</summary>
internal static class RimCrossings
{
    // Over a sheet, rims within 45° of parallel stop each other's currents; over a slit in its plane they must be parallel within 8°.
    private const double FacingCosine = -0.7;
    private const double ParallelCosine = -0.99;

    // The nearest foot opposite may lie so far aside: feet are not closer than this.
    private const double AsidePerWavelength = 0.125;

    /// <summary>At most one way over the sheet and one through the air to each foot.</summary>
    /// <param name="shared">The feet with their rims; those at which ways start are added.</param>
    /// <param name="rims">All rims of the sheet.</param>
    /// <param name="wavelength">λ [m]; &gt; 0.</param>
    internal static RimCrossing[] Of(SharedFeet shared, IReadOnlyList<Rim> rims, double wavelength)
    {
        (Rim Rim, RimFoot Foot)[] ends = shared.Used;
        List<RimCrossing> crossings = [];
        for (int end = 0; end < ends.Length; end++)
        {
            if (OverSheet(ends[end], end, rims, shared, wavelength) is { } over)
            {
                crossings.Add(over);
            }

            if (ends[end].Rim.IsStraight && ThroughAir(ends, end, AsidePerWavelength * wavelength) is { } through)
            {
                crossings.Add(through);
            }
        }

        return [.. crossings];
    }

    private static RimCrossing? OverSheet((Rim Rim, RimFoot Foot) end, int index, IReadOnlyList<Rim> rims, SharedFeet shared, double wavelength)
    {
        foreach ((Rim rim, RimFoot start) in EdgeLinks.Seen(end.Foot.Place, [.. rims.Where(rim => rim != end.Rim)]))
        {
            if (Vector.Dot(start.Inward, end.Foot.Inward) < FacingCosine)
            {
                (int from, double ahead) = shared.Share(rim, start);
                double spreading = EdgeLinks.Spreading(rim, end.Foot.Place, start, wavelength);
                return new RimCrossing(from, index, start.Distance, ahead, spreading, ThroughAir: false);
            }
        }

        return null;
    }

    private static RimCrossing? ThroughAir((Rim Rim, RimFoot Foot)[] feet, int end, double mostAside)
    {
        RimFoot here = feet[end].Foot;
        RimCrossing? nearest = null;
        double nearestAside = mostAside;
        for (int i = 0; i < feet.Length; i++)
        {
            RimFoot there = feet[i].Foot;
            if (Vector.Dot(here.Inward, there.Inward) > ParallelCosine || !feet[i].Rim.IsStraight)
            {
                continue;
            }

            Vector way = here.Place - there.Place, along = Vector.Cross(there.Inward, there.Normal);
            double distance = -Vector.Dot(way, there.Inward), ahead = Vector.Dot(way, along), aside = (way + (there.Inward * distance)).Length;
            bool isNearer = nearest is not { } n || distance < n.Distance - mostAside || (distance < n.Distance + mostAside && aside < nearestAside);
            if (distance > 0.0 && aside <= mostAside && isNearer)
            {
                (nearest, nearestAside) = (new RimCrossing(i, end, distance, ahead, 1.0, ThroughAir: true), aside);
            }
        }

        return nearest;
    }
}
