namespace Hornbook.Physics.Radiation.Mirrorings;

/// <summary>Mirrorings of places and vectors, and which of many places are each other's images.</summary>
internal static class MirrorImages
{
    // The boxes in which places are looked up are so much larger than an image may be off; still far smaller than from place to place.
    private const double RoomPerReach = 16.0;

    /// <summary>Every mirroring but none.</summary>
    internal static readonly Mirroring[] All = [Mirroring.Sideways, Mirroring.Upright, Mirroring.HalfTurn];

    /// <summary>A place or a direction mirrored, own frame.</summary>
    internal static Vector Of(Mirroring mirroring, Vector own) => new(own.X, own.Y * Sign(mirroring, Mirroring.Sideways), own.Z * Sign(mirroring, Mirroring.Upright));

    /// <summary>An electric field or current mirrored, own frame.</summary>
    internal static ComplexVector OfElectric(Mirroring mirroring, in ComplexVector own) =>
        new(own.X, own.Y * Sign(mirroring, Mirroring.Sideways), own.Z * Sign(mirroring, Mirroring.Upright));

    /// <summary>A magnetic field or current mirrored, own frame: turned as an electric one is, and once more about where a plane mirrors it, as whatever goes round an axis.</summary>
    internal static ComplexVector OfMagnetic(Mirroring mirroring, in ComplexVector own) => OfElectric(mirroring, own) * Handedness(mirroring);

    /// <summary>−1 where right becomes left, else 1.</summary>
    internal static double Handedness(Mirroring mirroring) => Sign(mirroring, Mirroring.Sideways) * Sign(mirroring, Mirroring.Upright);

    /// <summary>The image of each place among them; null where one has none.</summary>
    /// <param name="places">Own frame [m]; at least one, none near another.</param>
    /// <param name="mirroring">Of them.</param>
    /// <param name="within">How far from its place an image may lie [m].</param>
    internal static int[]? Among(Vector[] places, Mirroring mirroring, double within)
    {
        double grid = RoomPerReach * within;
        (long, long) Box(double y, double z) => ((long)Math.Floor(y / grid), (long)Math.Floor(z / grid));
        Dictionary<(long, long), int> boxes = [];
        for (int i = 0; i < places.Length; i++)
        {
            boxes.TryAdd(Box(places[i].Y, places[i].Z), i);
        }

        // An image that lies near a side of its box may have its place in the next one.
        int Found(Vector image, double aside, double above) =>
            boxes.TryGetValue(Box(image.Y + aside, image.Z + above), out int other) && (places[other] - image).Length <= within ? other : -1;
        int[] images = new int[places.Length];
        for (int i = 0; i < images.Length; i++)
        {
            Vector image = Of(mirroring, places[i]);
            images[i] = Math.Max(
                Math.Max(Found(image, -within, -within), Found(image, within, within)), Math.Max(Found(image, -within, within), Found(image, within, -within)));
        }

        return Array.IndexOf(images, -1) < 0 ? images : null;
    }

    private static double Sign(Mirroring mirroring, Mirroring part) => mirroring.HasFlag(part) ? -1.0 : 1.0;
}
