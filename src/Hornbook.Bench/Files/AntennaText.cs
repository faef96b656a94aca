using Hornbook.Bench.Files.Format;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;

namespace Hornbook.Bench.Files;

/// <summary>An antenna as the table of a bench file, to be pasted into one.</summary>
public static class AntennaText
{
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
            yield return $"mouth_width = {LengthText.Of(shape.MouthWidth)}";
        }

        if (kind is AntennaFormat.Pyramidal or AntennaFormat.EPlane)
        {
            yield return $"mouth_height = {LengthText.Of(shape.MouthHeight)}";
        }

        if (shape is Horn horn)
        {
            yield return $"length = {LengthText.Of(horn.Length)}";
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
        : $"{{ width = {LengthText.Of(guide.Width)}, height = {LengthText.Of(guide.Height)} }}";
}
