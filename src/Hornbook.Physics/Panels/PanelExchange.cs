using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels;

/// <summary>Panels where they stand, lit by a source, each ready to answer to the others.</summary>
internal sealed class PanelExchange
{
    private readonly double _wavenumber;
    private readonly PanelInPlace[] _panels;
    private readonly Arrivals[] _fromSource;
    private readonly int[] _outwards;

    /// <summary>Lights the panels.</summary>
    /// <param name="mouth">The source's currents, bench frame.</param>
    /// <param name="from">The centre of its mouth [m].</param>
    /// <param name="wavenumber">k [1/m].</param>
    /// <param name="panels">The panels.</param>
    internal PanelExchange(CurrentSamples mouth, Vector from, double wavenumber, IReadOnlyList<PosedPanel> panels)
    {
        _wavenumber = wavenumber;
        _panels = [.. panels.Select(panel => new PanelInPlace(panel))];
        _fromSource = Array.ConvertAll(_panels, panel => new Arrivals(panel).With(mouth, wavenumber));
        _outwards = [.. Enumerable.Range(0, panels.Count).OrderBy(i => _panels[i].Points.Min(point => (point - from).Length))];
    }

    /// <summary>Lets every panel answer once, from the source outwards, to what the others send at that moment.</summary>
    /// <param name="before">The currents of the panels.</param>
    /// <returns>Their currents afterwards.</returns>
    internal CurrentSamples[] Sweep(CurrentSamples[] before)
    {
        CurrentSamples[] currents = [.. before];
        foreach (int i in _outwards)
        {
            Arrivals arrivals = _fromSource[i];
            for (int other = 0; other < currents.Length; other++)
            {
                arrivals = other == i ? arrivals : arrivals.With(currents[other], _wavenumber);
            }

            currents[i] = _panels[i].Answer(arrivals);
        }

        return currents;
    }
}
