using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels;

/// <summary>The fields that arrive at the cells of a panel, by the face that they meet. Immutable.</summary>
/// <remarks>
/// What comes from one side is added up before it is taken for a plane wave: behind a screen the wave and the shadow that cancels it must
/// meet first. A current belongs to the side of the panel's plane on which it flows.
/// </remarks>
internal sealed class Arrivals
{
    private readonly PanelInPlace _panel;
    private readonly FieldSample[] _front;
    private readonly FieldSample[] _back;

    /// <summary>Nothing arrives.</summary>
    internal Arrivals(PanelInPlace panel)
        : this(panel, new FieldSample[panel.Points.Length], new FieldSample[panel.Points.Length])
    {
    }

    private Arrivals(PanelInPlace panel, FieldSample[] front, FieldSample[] back) => (_panel, _front, _back) = (panel, front, back);

    /// <summary>These arrivals and the field of currents.</summary>
    internal Arrivals With(CurrentSamples currents, double wavenumber)
    {
        CurrentSamples inFront = currents.Where(point => _panel.InFront(point) >= 0.0);
        CurrentSamples behind = inFront.Count == currents.Count ? CurrentSamples.None : currents.Where(point => _panel.InFront(point) < 0.0);
        return new Arrivals(_panel, Added(inFront, wavenumber, _front), Added(behind, wavenumber, _back));
    }

    /// <summary>The currents of a cell: the jumps of both arrivals together.</summary>
    internal (ComplexVector Electric, ComplexVector Magnetic) Jump(int cell, PreparedPanel panel, Vector normal, Vector across)
    {
        double area = panel.Cells[cell].Area;
        SheetJump.Of(panel.Response, SheetFace.Front, normal, across, _front[cell], out ComplexVector frontJ, out ComplexVector frontM);
        SheetJump.Of(panel.Response, SheetFace.Back, normal, across, _back[cell], out ComplexVector backJ, out ComplexVector backM);
        return ((frontJ + backJ) * area, (frontM + backM) * area);
    }

    private FieldSample[] Added(CurrentSamples currents, double wavenumber, FieldSample[] fields)
    {
        if (currents.Count == 0)
        {
            return fields;
        }

        FieldSample[] sums = new FieldSample[fields.Length];
        RadiatedField.EvaluateMap(currents, wavenumber, _panel.Points, sums);
        for (int i = 0; i < sums.Length; i++)
        {
            sums[i] = sums[i].Plus(fields[i]);
        }

        return sums;
    }
}
