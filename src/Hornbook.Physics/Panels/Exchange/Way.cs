using Hornbook.Physics.Panels.Exchange.Legs;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>How the field of one body comes to a panel: a part of the body for each face. Geometry only; kept as long as neither moves.</summary>
/// <remarks>A current belongs to the side of a flat panel's plane on which it flows. At a bent panel the flow of power at each cell decides.</remarks>
internal sealed class Way
{
    private readonly PanelInPlace _panel;
    private readonly (SheetFace Face, Leg Leg)[] _legs;

    private Way(PanelInPlace panel, (SheetFace Face, Leg Leg)[] legs) => (_panel, _legs) = (panel, legs);

    /// <summary>The way from a body to a panel.</summary>
    /// <param name="body">What sends.</param>
    /// <param name="panel">What receives.</param>
    /// <param name="wavenumber">k [1/m].</param>
    /// <param name="use">What it is for.</param>
    internal static Way Between(Body body, PanelInPlace panel, double wavenumber, WayUse use)
    {
        if (!panel.IsFlat)
        {
            return new Way(panel, [(SheetFace.Front, Leg.Of(body, panel, wavenumber, use))]);
        }

        (SheetFace Face, Body? Part)[] sides = [(SheetFace.Front, body.Where(panel.IsInFront)), (SheetFace.Back, body.Where(point => !panel.IsInFront(point)))];
        (SheetFace Face, Leg? Leg)[] legs = new (SheetFace, Leg?)[sides.Length];
        Parallel.For(0, sides.Length, i => legs[i] = (sides[i].Face, sides[i].Part is { } part ? Leg.Of(part, panel, wavenumber, use) : null));
        return new Way(panel, [.. legs.Where(leg => leg.Leg is not null).Select(leg => (leg.Face, leg.Leg!))]);
    }

    /// <summary>Whether anything of it may meet a face.</summary>
    internal bool Meets(SheetFace face) => !_panel.IsFlat || _legs.Any(leg => leg.Face == face);

    /// <summary>Adds the field of the whole body's currents to what arrives.</summary>
    internal void Add(CurrentSamples currents, Arrivals arrivals)
    {
        foreach ((SheetFace face, Leg leg) in _legs)
        {
            if (_panel.IsFlat)
            {
                leg.Add(currents, arrivals.AddTo(face));
            }
            else
            {
                AddByFlow(leg, currents, arrivals);
            }
        }
    }

    private void AddByFlow(Leg leg, CurrentSamples currents, Arrivals arrivals)
    {
        FieldSample[] fields = new FieldSample[_panel.Observers.Points.Length];
        leg.Add(currents, fields);
        for (int i = 0; i < fields.Length; i++)
        {
            ref FieldSample sum = ref arrivals.AddTo(_panel.FaceAt(i, fields[i]))[i];
            sum = sum.Plus(fields[i]);
        }
    }
}
