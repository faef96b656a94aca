using Hornbook.Bench.Files.Format;

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
}
