namespace Hornbook.Bench.Files.Syntax;

/// <summary>A value in the file and where it stands.</summary>
/// <param name="Place">Where: quotes and brackets included; for a table the name in its header.</param>
internal abstract record Node(Place Place);

/// <summary>A text, number, truth value or date.</summary>
/// <param name="Place">Where, quotes included.</param>
/// <param name="Value">string, long, double, bool, or null for dates.</param>
/// <param name="Raw">As it stands in the file.</param>
internal sealed record ScalarNode(Place Place, object? Value, string Raw) : Node(Place);

/// <summary>A list, or the tables under one [[name]].</summary>
/// <param name="Place">Where it begins.</param>
/// <param name="OfTables">Whether it was written as [[name]] tables.</param>
internal sealed record ListNode(Place Place, bool OfTables) : Node(Place)
{
    /// <summary>In order.</summary>
    internal List<Node> Items { get; } = [];
}
