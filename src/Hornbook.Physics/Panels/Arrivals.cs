using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels;

/// <summary>The fields that arrive at the cells of a panel, by the face that they meet.</summary>
/// <remarks>
/// What comes from one side is added up before it is taken for a plane wave: behind a screen the wave and the shadow that cancels it must
/// meet first. A current belongs to the side of the panel's plane on which it flows.
/// </remarks>
internal sealed class Arrivals
{
    private readonly PanelInPlace _panel;
    private readonly FieldSample[] _front;
    private readonly FieldSample[] _back;

    internal Arrivals(PanelInPlace panel)
    {
        _panel = panel;
        _front = new FieldSample[panel.Points.Length];
        _back = new FieldSample[panel.Points.Length];
    }

    private Arrivals(Arrivals other)
    {
        _panel = other._panel;
        _front = [.. other._front];
        _back = [.. other._back];
    }

    internal Arrivals Copy() => new(this);

    /// <summary>Adds the field of currents.</summary>
    internal void Add(CurrentSamples currents, double wavenumber)
    {
        CurrentSamples inFront = currents.Where(point => _panel.InFront(point) >= 0.0);
        CurrentSamples behind = inFront.Count == currents.Count ? CurrentSamples.None : currents.Where(point => _panel.InFront(point) < 0.0);
        Add(inFront, wavenumber, _front);
        Add(behind, wavenumber, _back);
    }

    /// <summary>The currents of a cell: the jumps of both arrivals together.</summary>
    internal (ComplexVector Electric, ComplexVector Magnetic) Jump(int cell, PreparedPanel panel, Vector normal, Vector across)
    {
        double area = panel.Cells[cell].Area;
        SheetJump.Of(panel.Response, SheetFace.Front, normal, across, _front[cell], out ComplexVector frontJ, out ComplexVector frontM);
        SheetJump.Of(panel.Response, SheetFace.Back, normal, across, _back[cell], out ComplexVector backJ, out ComplexVector backM);
        return ((frontJ + backJ) * area, (frontM + backM) * area);
    }

    private void Add(CurrentSamples currents, double wavenumber, FieldSample[] sums)
    {
        if (currents.Count == 0)
        {
            return;
        }

        FieldSample[] fields = new FieldSample[sums.Length];
        RadiatedField.EvaluateMap(currents, wavenumber, _panel.Points, fields);
        for (int i = 0; i < sums.Length; i++)
        {
            sums[i] = sums[i].Plus(fields[i]);
        }
    }
}
