using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels;

/// <summary>The exchange of fields between panels.</summary>
/// <param name="Currents">Of each panel after the last sweep.</param>
/// <param name="Before">Of each panel before it.</param>
/// <param name="Count">How many sweeps.</param>
/// <param name="Residue">Change in the last sweep over the currents [-].</param>
internal sealed record PanelSweeps(CurrentSamples[] Currents, CurrentSamples[] Before, int Count, double Residue)
{
    internal static PanelSweeps Run(CurrentSamples mouth, Vector from, double wavenumber, IReadOnlyList<PosedPanel> panels)
    {
        PanelInPlace[] places = [.. panels.Select(panel => new PanelInPlace(panel))];
        Arrivals[] fromSource = Array.ConvertAll(places, place => Lit(place, mouth, wavenumber));
        int[] order = [.. Enumerable.Range(0, places.Length).OrderBy(i => places[i].Points.Min(point => (point - from).Length))];
        CurrentSamples[] currents = Array.ConvertAll(places, _ => CurrentSamples.None);
        CurrentSamples[] before = currents;
        int count = 0;
        double residue = 0.0;
        do
        {
            before = [.. currents];
            foreach (int i in order)
            {
                currents[i] = places[i].Answer(Heard(i, fromSource[i], currents, wavenumber));
            }

            count++;
            residue = places.Length < 2 ? 0.0 : Change(currents, before);
        }
        while (residue > Illumination.SettledResidue && count < Illumination.MostSweeps);
        return new PanelSweeps(currents, before, count, residue);
    }

    private static Arrivals Lit(PanelInPlace place, CurrentSamples mouth, double wavenumber)
    {
        Arrivals arrivals = new(place);
        arrivals.Add(mouth, wavenumber);
        return arrivals;
    }

    private static Arrivals Heard(int panel, Arrivals fromSource, CurrentSamples[] currents, double wavenumber)
    {
        Arrivals all = fromSource.Copy();
        for (int other = 0; other < currents.Length; other++)
        {
            if (other != panel)
            {
                all.Add(currents[other], wavenumber);
            }
        }

        return all;
    }

    private static double Change(CurrentSamples[] after, CurrentSamples[] before)
    {
        double change = 0.0, whole = 0.0;
        for (int i = 0; i < after.Length; i++)
        {
            change += after[i].SquaredDistance(before[i]);
            whole += after[i].SquaredDistance(CurrentSamples.None);
        }

        return whole > 0.0 ? Math.Sqrt(change / whole) : 0.0;
    }
}
