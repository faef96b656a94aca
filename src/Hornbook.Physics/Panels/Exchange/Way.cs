using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Transfers;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>How the field of one body comes to a panel: a part of the body for each face. Geometry only; kept as long as neither moves.</summary>
/// <remarks>A current belongs to the side of a flat panel's plane on which it flows. At a bent panel the flow of power at each cell decides.</remarks>
internal sealed class Way
{
    private readonly PanelInPlace _panel;
    private readonly Leg[] _legs;

    private Way(PanelInPlace panel, Leg[] legs) => (_panel, _legs) = (panel, legs);

    /// <summary>The way from a body to a panel.</summary>
    internal static Way Between(Body body, PanelInPlace panel, double wavenumber)
    {
        if (!panel.IsFlat)
        {
            return new Way(panel, [Leg.Of(body, SheetFace.Front, panel, wavenumber)]);
        }

        Body? inFront = body.Where(panel.IsInFront), behind = body.Where(point => !panel.IsInFront(point));
        List<Leg> legs = [];
        if (inFront is not null)
        {
            legs.Add(Leg.Of(inFront, SheetFace.Front, panel, wavenumber));
        }

        if (behind is not null)
        {
            legs.Add(Leg.Of(behind, SheetFace.Back, panel, wavenumber));
        }

        return new Way(panel, [.. legs]);
    }

    /// <summary>Adds the field of the whole body's currents to what arrives.</summary>
    internal void Add(CurrentSamples currents, Arrivals arrivals)
    {
        foreach (Leg leg in _legs)
        {
            if (_panel.IsFlat)
            {
                leg.Add(currents, arrivals.Cells(leg.Face), arrivals.Rim(leg.Face));
            }
            else
            {
                AddByFlow(leg, currents, arrivals);
            }
        }
    }

    private void AddByFlow(Leg leg, CurrentSamples currents, Arrivals arrivals)
    {
        FieldSample[] cells = new FieldSample[arrivals.Front.Length], rim = new FieldSample[arrivals.FrontRim.Length];
        leg.Add(currents, cells, rim);
        for (int i = 0; i < cells.Length; i++)
        {
            ref FieldSample sum = ref arrivals.Cells(_panel.FaceAtCell(i, cells[i]))[i];
            sum = sum.Plus(cells[i]);
        }

        for (int i = 0; i < rim.Length; i++)
        {
            ref FieldSample sum = ref arrivals.Rim(_panel.FaceAtRim(i, rim[i]))[i];
            sum = sum.Plus(rim[i]);
        }
    }

    private sealed record Leg(Body Part, SheetFace Face, FieldTransfer ToCells, FieldTransfer? ToRim)
    {
        internal static Leg Of(Body part, SheetFace face, PanelInPlace panel, double wavenumber) => new(
            part,
            face,
            FieldTransfer.Between(part.Tree, panel.Cells.Tree, wavenumber),
            panel.Rim is null ? null : FieldTransfer.Between(part.Tree, panel.Rim.Tree, wavenumber));

        internal void Add(CurrentSamples whole, FieldSample[] cells, FieldSample[] rim)
        {
            CurrentSamples currents = Part.Chosen(whole);
            ToCells.AddFromFirst(currents, cells);
            ToRim?.AddFromFirst(currents, rim);
        }
    }
}
