
namespace Hornbook.Physics.Radiation.Mirrorings;

/// <summary>What a mirroring makes of currents.</summary>
internal static class CurrentSymmetry
{
    // Of the size of a mouth: how far an image may lie from its place.
    private const double SamePlace = 1e-9;

    // Of the squares of the currents; currents that differ by a millionth are alike.
    private const double Same = 1e-12;

    /// <summary>The sign of each mirroring, none first.</summary>
    /// <param name="currents">In the frame of the mirrorings; at least one that is not zero.</param>
    internal static int[] Signs(CurrentSamples currents) => [1, .. MirrorImages.All.Select(mirroring => Sign(currents, mirroring))];

    /// <summary>1 where it leaves them as they are, −1 where it makes them their opposite, 0 where it does something else.</summary>
    /// <param name="currents">In the frame of the mirroring; at least one that is not zero.</param>
    /// <param name="mirroring">Of them.</param>
    internal static int Sign(CurrentSamples currents, Mirroring mirroring)
    {
        Vector[] places = currents.Points.ToArray();
        if (MirrorImages.Among(places, mirroring, SamePlace * places.Max(place => place.Length)) is not { } images)
        {
            return 0;
        }

        ComplexVector[] electric = new ComplexVector[places.Length], magnetic = new ComplexVector[places.Length];
        for (int i = 0; i < places.Length; i++)
        {
            electric[images[i]] = MirrorImages.OfElectric(mirroring, currents.Electric[i]);
            magnetic[images[i]] = MirrorImages.OfMagnetic(mirroring, currents.Magnetic[i]);
        }

        double share = CurrentSamples.Inner(currents, CurrentSamples.Keeping(places, electric, magnetic)).Real / currents.Squared();
        return Math.Abs(share) >= 1.0 - Same ? Math.Sign(share) : 0;
    }
}
