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
    // A start that is near the solution says little about how the last of it is found.
    private const double LeastToCome = 1.0;

    /// <summary>Sweeps from the dark until the currents have settled.</summary>
    /// <param name="exchange">The panels.</param>
    /// <param name="settled">At what residue to stop [-].</param>
    /// <param name="most">After how many sweeps to give up.</param>
    internal static PanelSweeps Run(PanelExchange exchange, double settled = Illumination.SettledResidue, int most = Illumination.MostSweeps)
    {
        CurrentSamples[] dark = [.. Enumerable.Repeat(CurrentSamples.None, exchange.Count)];
        if (ImageCorrection.Of(exchange) is { } images)
        {
            return With(images, exchange, dark, toCome: 1.0, settled, most);
        }

        Heard heard = new(exchange.Count);
        CurrentSamples[] lit = exchange.Sweep(dark, heard);
        return exchange.Count < 2
            ? new PanelSweeps(lit, dark, 1, 0.0, 0.0)
            : new SweepRun(exchange, heard, new SweepRun.Beginning(dark, lit, 1.0, 1.0, AsTheyAre: SweepRun.Outwards)).Until(settled, most);
    }

    /// <summary>The same from currents near to the solution.</summary>
    /// <param name="exchange">The panels.</param>
    /// <param name="start">Their currents, and how they settled.</param>
    internal static PanelSweeps From(PanelExchange exchange, KnownCurrents start)
    {
        if (ImageCorrection.Of(exchange) is { } images)
        {
            return With(images, exchange, exchange.InPlace(start), start.ToCome);
        }

        Heard heard = new(exchange.Count);
        CurrentSamples[] before = exchange.InPlace(start), after = exchange.Sweep(before, heard);
        return exchange.Count < 2
            ? new PanelSweeps(after, before, 1, 0.0, 0.0)
            : new SweepRun(exchange, heard, new SweepRun.Beginning(before, after, Change(before, after), Math.Max(LeastToCome, start.ToCome), AsTheyAre: 1))
                .Until(Illumination.SettledResidue, Illumination.MostSweeps);
    }

    /// <summary>The same where some panels have moved and others have not.</summary>
    /// <param name="exchange">The panels; two at least.</param>
    /// <param name="kept">The currents of those that have not moved; none of the others.</param>
    /// <param name="known">The currents of all before the move, where they are the same panels.</param>
    internal static PanelSweeps Moved(PanelExchange exchange, CurrentSamples[] kept, KnownCurrents? known)
    {
        if (ImageCorrection.Of(exchange) is { } images)
        {
            return known is null ? With(images, exchange, kept, toCome: 1.0) : With(images, exchange, exchange.InPlace(known), known.ToCome);
        }

        Heard heard = new(exchange.Count);
        (CurrentSamples[] before, CurrentSamples[] after) = exchange.SweepInwards(kept, heard);
        return new SweepRun(exchange, heard, new SweepRun.Beginning(before, after, Change(before, after), 1.0, AsTheyAre: SweepRun.Outwards))
            .Until(Illumination.SettledResidue, Illumination.MostSweeps);
    }

    private static PanelSweeps With(
        ImageCorrection images, PanelExchange exchange, CurrentSamples[] start, double toCome, double settled = Illumination.SettledResidue, int most = Illumination.MostSweeps)
    {
        Heard heard = new(exchange.Count);
        CurrentSamples[] before = exchange.Mirrored(start, heard, images), after = exchange.Sweep(before, heard, images);
        return new SweepRun(exchange, heard, new SweepRun.Beginning(before, after, Change(before, after), toCome, AsTheyAre: 1, images)).Until(settled, most);
    }

    /// <summary>The change from one sweep to the next over the currents [-].</summary>
    internal static double Change(CurrentSamples[] before, CurrentSamples[] after)
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
