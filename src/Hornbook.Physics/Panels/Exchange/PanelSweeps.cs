using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>The exchange of fields between panels, solved.</summary>
/// <param name="Currents">Of each panel after the last sweep.</param>
/// <param name="Before">Of each panel before it.</param>
/// <param name="Count">How many sweeps.</param>
/// <param name="ToCome">How many times the last change is still to come, by how the changes shrink [-].</param>
/// <param name="Residue">What is still missing of the currents, over the currents [-]: that many times the last change.</param>
internal sealed record PanelSweeps(CurrentSamples[] Currents, CurrentSamples[] Before, int Count, double ToCome, double Residue)
{
    // The first sweeps only carry the wave outwards; there is nothing to mix yet.
    private const int SweepsBeforeMixing = 3;

    // One lucky sweep does not promise that the next one will be as good, nor a bad one that nothing ever comes.
    private const double LeastShare = 0.1;
    private const double MostShare = 0.98;

    // Mixing makes changes shrink unevenly: they are judged over so many sweeps.
    private const int SweepsJudged = 4;

    /// <summary>Sweeps from the dark until the currents have settled.</summary>
    /// <param name="exchange">The panels.</param>
    /// <param name="settled">At what residue to stop [-].</param>
    /// <param name="most">After how many sweeps to give up.</param>
    internal static PanelSweeps Run(PanelExchange exchange, double settled = Illumination.SettledResidue, int most = Illumination.MostSweeps)
    {
        Heard heard = new(exchange.Count);
        CurrentSamples[] dark = [.. Enumerable.Repeat(CurrentSamples.None, exchange.Count)], first = exchange.Sweep(dark, heard);
        return exchange.Count < 2
            ? new PanelSweeps(first, dark, 1, 0.0, 0.0)
            : Run(exchange, heard, (dark, first), (1.0, 1.0), SweepsBeforeMixing, settled, most);
    }

    /// <summary>The same from currents near to the solution.</summary>
    /// <param name="exchange">The panels.</param>
    /// <param name="start">Their currents, and how many times the change of a sweep may still be to come there.</param>
    internal static PanelSweeps From(PanelExchange exchange, KnownCurrents start)
    {
        Heard heard = new(exchange.Count);
        CurrentSamples[] before = exchange.InPlace(start), after = exchange.Sweep(before, heard);
        return exchange.Count < 2
            ? new PanelSweeps(after, before, 1, 0.0, 0.0)
            : Run(exchange, heard, (before, after), (Change(before, after), start.ToCome), 1, Illumination.SettledResidue, Illumination.MostSweeps);
    }

    /// <summary>The same where some panels have moved and others have not.</summary>
    /// <param name="exchange">The panels; two at least.</param>
    /// <param name="kept">The currents of those that have not moved; none of the others.</param>
    internal static PanelSweeps Moved(PanelExchange exchange, CurrentSamples[] kept)
    {
        Heard heard = new(exchange.Count);
        (CurrentSamples[] Before, CurrentSamples[] After) first = exchange.SweepInwards(kept, heard);
        return Run(exchange, heard, first, (Change(first.Before, first.After), 1.0), SweepsBeforeMixing, Illumination.SettledResidue, Illumination.MostSweeps);
    }

    private static PanelSweeps Run(
        PanelExchange exchange, Heard heard, (CurrentSamples[] Before, CurrentSamples[] After) first, (double Change, double ToCome) begun, int beforeMixing, double settled, int most)
    {
        (CurrentSamples[] before, CurrentSamples[] after) = first;
        SweepAcceleration acceleration = new();
        List<double> changes = [begun.Change];
        double toCome = begun.ToCome;
        while (toCome * changes[^1] > settled && changes.Count < most)
        {
            before = changes.Count < beforeMixing ? after : acceleration.Next(before, after);
            after = exchange.Sweep(before, heard);
            changes.Add(Change(before, after));
            toCome = StillToCome(changes);
        }

        return new PanelSweeps(after, before, changes.Count, toCome, toCome * changes[^1]);
    }

    // Changes that shrink by a share ρ each time leave ρ/(1 − ρ) of the last one undone.
    private static double StillToCome(List<double> changes)
    {
        int last = changes.Count - 1, first = Math.Max(0, last - SweepsJudged);
        double lately = Math.Pow(changes[last] / changes[first], 1.0 / (last - first));
        double share = Math.Clamp(lately, LeastShare, MostShare);
        return share / (1.0 - share);
    }

    private static double Change(CurrentSamples[] before, CurrentSamples[] after)
    {
        double change = 0.0, whole = 0.0;
        for (int i = 0; i < after.Length; i++)
        {
            change += after[i].Plus(before[i], -1.0).Squared();
            whole += after[i].Squared();
        }

        return whole > 0.0 ? Math.Sqrt(change / whole) : 0.0;
    }
}
