using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels;

/// <summary>The exchange of fields between panels, solved.</summary>
/// <param name="Currents">Of each panel after the last sweep.</param>
/// <param name="Before">Of each panel before it.</param>
/// <param name="Count">How many sweeps.</param>
/// <param name="Residue">Change in the last sweep over the currents [-].</param>
internal sealed record PanelSweeps(CurrentSamples[] Currents, CurrentSamples[] Before, int Count, double Residue)
{
    // The first sweeps only carry the wave outwards; there is nothing to mix yet.
    private const int SweepsBeforeMixing = 3;

    internal static PanelSweeps Run(CurrentSamples mouth, Vector from, double wavenumber, IReadOnlyList<PosedPanel> panels)
    {
        PanelExchange exchange = new(mouth, from, wavenumber, panels);
        SweepAcceleration acceleration = new();
        CurrentSamples[] before = [.. panels.Select(_ => CurrentSamples.None)];
        CurrentSamples[] after = exchange.Sweep(before);
        int count = 1;
        double residue = panels.Count < 2 ? 0.0 : 1.0;
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
