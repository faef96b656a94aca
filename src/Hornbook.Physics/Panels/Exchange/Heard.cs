using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>What each panel answered to last: one that hears nothing new need not answer again.</summary>
/// <param name="panels">How many.</param>
internal sealed class Heard(int panels)
{
    private readonly CurrentSamples[]?[] _last = new CurrentSamples[]?[panels];

    /// <summary>Notes that a panel has answered.</summary>
    /// <param name="panel">Which.</param>
    /// <param name="currents">Of all panels, its answer among them.</param>
    internal void Answered(int panel, CurrentSamples[] currents) => _last[panel] = [.. currents];

    /// <summary>Whether a panel's current is its answer to those of all others: the very same, not equal ones.</summary>
    internal bool IsAnswered(int panel, CurrentSamples[] currents) =>
        _last[panel] is { } last && last.Zip(currents, ReferenceEquals).All(isSame => isSame);
}
