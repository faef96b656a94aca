using Hornbook.Bench.Demonstrations;

namespace Hornbook.Tabletop.Hands;

/// <summary>Something on the bench that hands move: an end or a panel.</summary>
/// <param name="Table">Its table in the bench file: "source", "receiver", "panels.strips".</param>
public readonly record struct BenchThing(string Table)
{
    private const string Panels = "panels.";

    /// <summary>The panel's name; null for an end.</summary>
    public string? PanelName => Table.StartsWith(Panels, StringComparison.Ordinal) ? Table[Panels.Length..] : null;

    /// <summary>The end; null for a panel.</summary>
    public BenchEnd? End => PanelName is null ? (Table == "source" ? BenchEnd.Source : BenchEnd.Receiver) : null;

    /// <summary>As it is named in a sentence.</summary>
    public string Name => PanelName is { } panel ? $"'{panel}'" : $"the {Table}";

    public static BenchThing Of(BenchEnd end) => new(end == BenchEnd.Source ? "source" : "receiver");

    public static BenchThing Panel(string name) => new(Panels + name);

    public static implicit operator BenchThing(BenchEnd end) => Of(end);
}
