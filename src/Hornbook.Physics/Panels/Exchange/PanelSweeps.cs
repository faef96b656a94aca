using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>The exchange of fields between panels, solved.</summary>
/// <param name="Currents">Of each panel after the last sweep.</param>
/// <param name="Before">Of each panel before it.</param>
/// <param name="Count">How many sweeps.</param>
/// <param name="Residue">Change in the last sweep over the currents [-].</param>
internal sealed record PanelSweeps(CurrentSamples[] Currents, CurrentSamples[] Before, int Count, double Residue)
{
    // The first sweeps only carry the wave outwards; there is nothing to mix yet.
    private const int SweepsBeforeMixing = 3;

    /// <summary>Sweeps until the currents have settled.</summary>
    /// <param name="exchange">The panels.</param>
    /// <param name="panels">How many.</param>
    internal static PanelSweeps Run(PanelExchange exchange, int panels)
    {
        SweepAcceleration acceleration = new();
        CurrentSamples[] before = [.. Enumerable.Repeat(CurrentSamples.None, panels)];
        CurrentSamples[] after = exchange.Sweep(before);
        int count = 1;
        double residue = panels < 2 ? 0.0 : 1.0;
        while (residue > Illumination.SettledResidue && count < Illumination.MostSweeps)
        {
            before = count < SweepsBeforeMixing ? after : acceleration.Next(before, after);
            after = exchange.Sweep(before);
            count++;
            residue = Change(before, after);
        }

        return new PanelSweeps(after, before, count, residue);
    }

    private static double Change(CurrentSamples[] before, CurrentSamples[] after)
    {
        double change = 0.0, whole = 0.0;
        for (int i = 0; i < after.Length; i++)
        {
            CurrentSamples difference = after[i].Plus(before[i], -1.0);
            change += CurrentSamples.Inner(difference, difference).Real;
            whole += CurrentSamples.Inner(after[i], after[i]).Real;
        }

        return whole > 0.0 ? Math.Sqrt(change / whole) : 0.0;
    }
}
