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
                leg.Add(currents, arrivals.On(leg.Face));
            }
            else
            {
                AddByFlow(leg, currents, arrivals);
            }
        }
    }

    private void AddByFlow(Leg leg, CurrentSamples currents, Arrivals arrivals)
    {
        FieldSample[] fields = new FieldSample[arrivals.Front.Length];
        leg.Add(currents, fields);
        for (int i = 0; i < fields.Length; i++)
        {
            ref FieldSample sum = ref arrivals.On(_panel.FaceAt(i, fields[i]))[i];
            sum = sum.Plus(fields[i]);
        }
    }

    private sealed record Leg(Body Part, SheetFace Face, PanelInPlace Panel, double Wavenumber, FieldTransfer? Transfer)
    {
        // To sort and plan takes longer than so few pairs of source and ear take to be summed.
        private const long FewPairs = 2_000_000;

        // Of the largest field there; the sweeps stop at four times as much.
        private const double Tolerance = 5e-4;

        internal static Leg Of(Body part, SheetFace face, PanelInPlace panel, double wavenumber)
        {
            bool isFew = (long)part.Points.Length * panel.Ears.Points.Length <= FewPairs;
            return new Leg(
                part, face, panel, wavenumber, isFew ? null : FieldTransfer.Between(part.Tree, panel.Ears.Tree, wavenumber, Tolerance));
        }

        internal void Add(CurrentSamples whole, FieldSample[] fields)
        {
            CurrentSamples currents = Part.Chosen(whole);
            if (Transfer is not null)
            {
                Transfer.AddFromFirst(currents, fields);
                return;
            }

            FieldSample[] own = new FieldSample[fields.Length];
            RadiatedField.EvaluateMap(currents, Wavenumber, Panel.Ears.Points, own);
            for (int i = 0; i < own.Length; i++)
            {
                fields[i] = fields[i].Plus(own[i]);
            }
        }
    }
}
