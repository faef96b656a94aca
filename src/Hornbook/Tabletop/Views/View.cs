namespace Hornbook.Tabletop.Views;

/// <summary>One of the views that the page has.</summary>
/// <param name="Name">As a visitor reads it.</param>
/// <param name="Address">Below the page's own; empty for the first.</param>
public sealed record View(string Name, string Address)
{
    /// <summary>All, in the order of the work.</summary>
    public static IReadOnlyList<View> All { get; } = [new("Bench", string.Empty)];

    /// <summary>Of the link to it.</summary>
    public string Id => $"view-{Name.ToLowerInvariant()}";
}
