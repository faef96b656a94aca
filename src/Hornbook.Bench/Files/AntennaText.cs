using Hornbook.Bench.Files.Format;
using Hornbook.Bench.Files.Quantities;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;

namespace Hornbook.Bench.Files;

/// <summary>An antenna as the table of a bench file, to be pasted into one.</summary>
public static class AntennaText
{
    // A micrometre: finer than anything that is cut, and it keeps the sizes of guides that are defined in inches.
    private static readonly Quantity Size = Quantity.Length with { Resolution = 1e-6 };
    private static readonly Unit Millimetre = Size.FindUnit("mm")!;

    /// <summary>The lines of the table; read back they give the same antenna, to a micrometre.</summary>
    /// <param name="name">What it shall be called: letters, digits, '-' and '_'.</param>
    /// <param name="shape">Its dimensions; a horn that flares, since the file takes no other.</param>
    public static IReadOnlyList<string> Lines(string name, AntennaShape shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        return
        [
            $"[antennas.{name}]",
            .. Sizes(shape),
            $"walls = \"{shape.Walls.Name}\"",
        ];
    }

    private static IEnumerable<string> Sizes(AntennaShape shape)
    {
        string kind = Kind(shape);
        yield return $"kind = \"{kind}\"";
        yield return $"guide = {Guide(shape.Guide)}";
        if (kind is AntennaFormat.Pyramidal or AntennaFormat.HPlane)
        {
            yield return $"mouth_width = {Length(shape.MouthWidth)}";
        }

        if (kind is AntennaFormat.Pyramidal or AntennaFormat.EPlane)
        {
            yield return $"mouth_height = {Length(shape.MouthHeight)}";
        }

        if (shape is Horn horn)
        {
            yield return $"length = {Length(horn.Length)}";
        }
    }

    private static string Kind(AntennaShape shape) => (
        shape is Horn, shape.MouthWidth > shape.Guide.Width, shape.MouthHeight > shape.Guide.Height) switch
    {
        (false, _, _) => AntennaFormat.OpenEnd,
        (_, true, false) => AntennaFormat.HPlane,
        (_, false, true) => AntennaFormat.EPlane,
        _ => AntennaFormat.Pyramidal,
    };

    private static string Guide(RectangularGuide guide) => StandardGuides.Matching(guide) is { } standard
        ? $"\"{standard.Name}\""
        : $"{{ width = {Length(guide.Width)}, height = {Length(guide.Height)} }}";

    private static string Length(double length) => $"\"{QuantityText.Write(length, Millimetre, Size)}\"";
}
