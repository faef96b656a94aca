using Hornbook.Tabletop.Hands;

namespace Hornbook.Tabletop;

/// <summary>How this window likes to work; remembered in the browser, not in the bench file.</summary>
/// <param name="Snaps">Whether a dragged thing goes in steps that are easy to set on a table.</param>
/// <param name="Unit">Of lengths.</param>
public sealed record Preferences(bool Snaps, LengthUnit Unit)
{
    public static Preferences First { get; } = new(true, LengthUnit.Centimetre);

    /// <summary>The steps of a drag; with the switch held off, the finest.</summary>
    public HandSteps Steps(bool free) => Snaps && !free ? HandSteps.Coarse(Unit) : HandSteps.Fine;
}
