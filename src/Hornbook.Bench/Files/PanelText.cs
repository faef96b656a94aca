using Hornbook.Bench.Files.Format;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Bench.Files;

/// <summary>Panels as the lines of a bench file, to be put into one.</summary>
public static class PanelText
{
    /// <summary>The kinds of panel that there are, in the words of the file.</summary>
    public static IReadOnlyList<string> Kinds { get; } = [.. PanelFormat.Panel.Variants.Select(variant => variant.Word)];

    /// <summary>The lines below the header of a new panel: what it needs, with customary values.</summary>
    /// <param name="kind">Its kind.</param>
    /// <exception cref="ArgumentException">There is no such kind.</exception>
    public static IReadOnlyList<string> Lines(string kind)
    {
        Variant variant = PanelFormat.Panel.Variants.FirstOrDefault(one => one.Word == kind)
            ?? throw new ArgumentException($"kind = {kind}; must be {Shown.Words(Kinds)}", nameof(kind));
        KeyRule[] chosen = [.. variant.Choices.SelectMany(choice => choice.Sets[0].Keys)];
        return
        [
            $"kind = \"{kind}\"",
            .. variant.Keys.Concat(PanelFormat.Panel.Keys).Where(key => key.IsRequired || chosen.Contains(key)).Select(key => $"{key.Name} = {key.Value.Example}"),
        ];
    }

    /// <summary>The lines below the header of a new panel of customary size that consists of a certain sheet.</summary>
    /// <param name="sheet">A grid of strips or wires, or one layer, of a material that has a name.</param>
    /// <exception cref="ArgumentException">It is another sheet.</exception>
    public static IReadOnlyList<string> Lines(ISheet sheet)
    {
        (string kind, (string Key, string Value)[] stated) = Stated(sheet);
        string[] lines = [.. Lines(kind).Where(line => stated.All(one => !line.StartsWith($"{one.Key} = ", StringComparison.Ordinal)))];
        return [lines[0], .. stated.Select(one => $"{one.Key} = {one.Value}"), .. lines[1..]];
    }

    private static (string Kind, (string Key, string Value)[] Stated) Stated(ISheet sheet) => sheet switch
    {
        StripGrid grid => (PanelFormat.StripGrid, [.. Sizes(grid)]),
        BoardedStripGrid { Board.Layers: [Layer board] } grid =>
            (PanelFormat.StripGrid, [.. Sizes(grid.Strips), ("board", $"{{ material = \"{board.Material.Name}\", thickness = {LengthText.Of(board.Thickness)} }}")]),
        WireGrid grid => (PanelFormat.WireGrid, [("period", LengthText.Of(grid.Period)), ("wire_diameter", LengthText.Of(grid.Diameter))]),
        LayeredSheet { Layers: [Layer layer] } => (PanelFormat.Sheet, [("material", $"\"{layer.Material.Name}\""), ("thickness", LengthText.Of(layer.Thickness))]),
        _ => throw new ArgumentException("the sheet is neither a grid nor a single layer", nameof(sheet)),
    };

    private static (string Key, string Value)[] Sizes(StripGrid grid) => [("period", LengthText.Of(grid.Period)), ("strip_width", LengthText.Of(grid.StripWidth))];
}
