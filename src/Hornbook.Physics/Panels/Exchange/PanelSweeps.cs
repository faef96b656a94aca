using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>The exchange of fields between panels, solved.</summary>
/// <param name="Currents">Of each panel after the last sweep.</param>
/// <param name="Before">Of each panel before it.</param>
/// <param name="Count">How many sweeps.</param>
/// <param name="ToCome">How many times the last change is still to come, by how the changes shrink [-].</param>
/// <param name="Residue">What is still missing of the currents, over the currents [-]: that many times the last change.</param>
/// <param name="ToAndFro">Whether the panels throw the wave to and fro, so that sweeps had to be corrected.</param>
internal sealed record PanelSweeps(CurrentSamples[] Currents, CurrentSamples[] Before, int Count, double ToCome, double Residue, bool ToAndFro)
{
    /// <summary>Sweeps from the dark until the currents have settled.</summary>
    /// <param name="exchange">The panels.</param>
    /// <param name="settling">When that is.</param>
    internal static PanelSweeps Run(PanelExchange exchange, Settling settling)
    {
        Heard heard = new(exchange.Count);
        CurrentSamples[] dark = [.. Enumerable.Repeat(CurrentSamples.None, exchange.Count)], lit = exchange.Sweep(dark, heard);
        return exchange.Count < 2
            ? new PanelSweeps(lit, dark, 1, 0.0, 0.0, ToAndFro: false)
            : new SweepRun(exchange, heard, new SweepRun.Beginning(dark, lit, 1.0, 1.0, AsTheyAre: SweepRun.Outwards, ToAndFro: false)).Until(settling);
    }

    /// <summary>The same from currents near to the solution.</summary>
    /// <param name="exchange">The panels.</param>
    /// <param name="start">Their currents, and how they settled.</param>
    /// <param name="settling">When they have settled.</param>
    internal static PanelSweeps From(PanelExchange exchange, KnownCurrents start, Settling settling)
    {
        Heard heard = new(exchange.Count);
        CurrentSamples[] before = exchange.InPlace(start), after = exchange.Sweep(before, heard);
        return exchange.Count < 2
            ? new PanelSweeps(after, before, 1, 0.0, 0.0, ToAndFro: false)
            : new SweepRun(exchange, heard, new SweepRun.Beginning(before, after, Change(before, after), start.ToCome, AsTheyAre: 1, start.ToAndFro))
                .Until(settling);
    }

    /// <summary>The same where some panels have moved and others have not.</summary>
    /// <param name="exchange">The panels; two at least.</param>
    /// <param name="kept">The currents of those that have not moved; none of the others.</param>
    /// <param name="toAndFro">Whether they threw the wave to and fro before the move.</param>
    /// <param name="settling">When they have settled.</param>
    internal static PanelSweeps Moved(PanelExchange exchange, CurrentSamples[] kept, bool toAndFro, Settling settling)
    {
        Heard heard = new(exchange.Count);
        (CurrentSamples[] before, CurrentSamples[] after) = exchange.SweepInwards(kept, heard);
        return new SweepRun(exchange, heard, new SweepRun.Beginning(before, after, Change(before, after), 1.0, AsTheyAre: SweepRun.Outwards, toAndFro))
            .Until(settling);
    }

    /// <summary>The change from one sweep to the next over the currents [-].</summary>
    internal static double Change(CurrentSamples[] before, CurrentSamples[] after)
    {
        double change = 0.0, whole = 0.0;
        for (int i = 0; i < after.Length; i++)
        {
            double squared = after[i].Squared();
            change += Math.Max(0.0, squared + before[i].Squared() - (2.0 * CurrentSamples.Inner(before[i], after[i]).Real));
            whole += squared;
        }

        return whole > 0.0 ? Math.Sqrt(change / whole) : 0.0;
    }
}
