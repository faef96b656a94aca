namespace Hornbook.Tabletop.Views;

/// <summary>One of the views that the page has.</summary>
/// <param name="Name">As a visitor reads it.</param>
/// <param name="Address">Below the page's own; empty for the first.</param>
/// <param name="ForGuests">Whether guests are shown the way to it; its page is then marked <see cref="Sharing.OpenToGuestsAttribute"/>.</param>
public sealed record View(string Name, string Address, bool ForGuests = false)
{
    /// <summary>All, in the order of the work.</summary>
    public static IReadOnlyList<View> All { get; } =
    [
        new("Bench", string.Empty, ForGuests: true),
        new("Programme", "programme"),
        new("Antennas", "antennas"),
        new("Panels", "panels"),
        new("Safety", "safety", ForGuests: true) { Warns = true },
        new("Benches", "benches"),
    ];

    /// <summary>Whether its link bears the shape of a warning.</summary>
    public bool Warns { get; init; }

    /// <summary>Of the link to it.</summary>
    public string Id => $"view-{Name.ToLowerInvariant()}";
}
