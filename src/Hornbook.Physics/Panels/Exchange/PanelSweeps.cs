using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>The exchange of fields between panels, solved.</summary>
/// <param name="Currents">Of each panel after the last sweep.</param>
/// <param name="Before">Of each panel before it.</param>
/// <param name="Count">How many sweeps.</param>
/// <param name="Residue">What is still missing of the currents, by the shrinking of their changes, over the currents [-].</param>
internal sealed record PanelSweeps(CurrentSamples[] Currents, CurrentSamples[] Before, int Count, double Residue)
{
    // The first sweeps only carry the wave outwards; there is nothing to mix yet.
    private const int SweepsBeforeMixing = 3;

    // One lucky sweep does not promise that the next one will be as good.
    private const double LeastShare = 0.1;

    /// <summary>Sweeps until the currents have settled.</summary>
    /// <param name="exchange">The panels.</param>
    internal static PanelSweeps Run(PanelExchange exchange)
    {
        SweepAcceleration acceleration = new();
        CurrentSamples[] before = [.. Enumerable.Repeat(CurrentSamples.None, exchange.Count)];
        CurrentSamples[] after = exchange.Sweep(before);
        int count = 1;
        double change = 1.0, residue = exchange.Count < 2 ? 0.0 : 1.0;
        while (residue > Illumination.SettledResidue && count < Illumination.MostSweeps)
        {
            before = count < SweepsBeforeMixing ? after : acceleration.Next(before, after);
            after = exchange.Sweep(before);
            count++;
            double earlier = change;
            change = Change(before, after);
            residue = Missing(change, earlier);
        }

        return new PanelSweeps(after, before, count, residue);
    }

    // Changes that shrink by a share ρ each time leave ρ/(1 − ρ) of the last one undone.
    private static double Missing(double change, double earlier)
    {
        double share = Math.Max(change / earlier, LeastShare);
        return share < 1.0 ? Math.Min(change, change * share / (1.0 - share)) : change;
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
