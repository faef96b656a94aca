using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>How a panel answers to a little more than what arrives at it: its sheet as to waves that travel as those that are there, its rim by the difference. Immutable.</summary>
internal sealed class NearbyAnswer
{
    private readonly PanelInPlace _panel;
    private readonly SheetFace _face;
    private readonly SheetJump[] _jumps;
    private readonly FieldSample[] _atRim;
    private readonly ComplexVector[] _edges;

    /// <param name="panel">The panel.</param>
    /// <param name="face">The face.</param>
    /// <param name="arrivals">What arrives on it, at the cells and then at the rim.</param>
    internal NearbyAnswer(PanelInPlace panel, SheetFace face, ReadOnlySpan<FieldSample> arrivals)
    {
        (_panel, _face, _jumps) = (panel, face, new SheetJump[panel.Cells.Points.Length]);
        for (int i = 0; i < _jumps.Length; i++)
        {
            _jumps[i] = panel.Jump(face, i, arrivals[i]);
        }

        _atRim = arrivals[_jumps.Length..].ToArray();
        _edges = EdgesTo(_atRim);
    }

    /// <summary>The currents that come with more arriving.</summary>
    /// <param name="more">That much more, at the cells and then at the rim.</param>
    internal CurrentSamples To(ReadOnlySpan<FieldSample> more)
    {
        FieldSample[] atRim = [.. _atRim];
        for (int i = 0; i < atRim.Length; i++)
        {
            atRim[i] = atRim[i].Plus(more[_jumps.Length + i]);
        }

        ComplexVector[] electric = EdgesTo(atRim), magnetic = new ComplexVector[_jumps.Length];
        for (int i = 0; i < _jumps.Length; i++)
        {
            _panel.Densities(i, _jumps[i], more[i], out ComplexVector j, out magnetic[i]);
            electric[i] += j + (_edges[i] * -1.0);
        }

        return _panel.OfDensities(electric, magnetic);
    }

    private ComplexVector[] EdgesTo(FieldSample[] atRim)
    {
        ComplexVector[] densities = new ComplexVector[_jumps.Length];
        _panel.AddEdges(atRim, _face, densities);
        return densities;
    }
}
