using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Lattices;
using Hornbook.Physics.Radiation.Transfers;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>How the field of one body comes to a panel: a part of the body for each face. Geometry only; kept as long as neither moves.</summary>
/// <remarks>A current belongs to the side of a flat panel's plane on which it flows. At a bent panel the flow of power at each cell decides.</remarks>
internal sealed class Way
{
    /// <summary>To sort and plan takes longer than so few pairs take to be summed once.</summary>
    internal const long FewPairsOnce = 2_000_000;

    // The same for a way that is gone several times.
    private const long FewPairs = 100_000;

    private readonly PanelInPlace _panel;
    private readonly Leg[] _legs;

    private Way(PanelInPlace panel, Leg[] legs) => (_panel, _legs) = (panel, legs);

    /// <summary>The way from a body to a panel.</summary>
    /// <param name="body">What sends.</param>
    /// <param name="panel">What receives.</param>
    /// <param name="wavenumber">k [1/m].</param>
    /// <param name="fewPairs">Up to so many pairs of sample and observer are summed directly.</param>
    internal static Way Between(Body body, PanelInPlace panel, double wavenumber, long fewPairs = FewPairs)
    {
        if (!panel.IsFlat)
        {
            return new Way(panel, [Leg.Of(body, SheetFace.Front, panel, wavenumber, fewPairs)]);
        }

        Body? inFront = body.Where(panel.IsInFront), behind = body.Where(point => !panel.IsInFront(point));
        (Body? Part, SheetFace Face)[] sides = [(inFront, SheetFace.Front), (behind, SheetFace.Back)];
        Leg?[] legs = new Leg?[sides.Length];
        Parallel.For(0, sides.Length, i => legs[i] = sides[i] is (Body part, SheetFace face) ? Leg.Of(part, face, panel, wavenumber, fewPairs) : null);
        return new Way(panel, [.. legs.OfType<Leg>()]);
    }

    /// <summary>Adds the field of the whole body's currents to what arrives.</summary>
    internal void Add(CurrentSamples currents, Arrivals arrivals)
    {
        foreach (Leg leg in _legs)
        {
            if (_panel.IsFlat)
            {
                leg.Add(currents, arrivals.AddTo(leg.Face));
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

    private sealed record Leg(Body Part, SheetFace Face, PanelInPlace Panel, double Wavenumber, FieldTransfer? Transfer, LatticeLeg? Even)
    {
        // Of the largest field there; the sweeps stop at four times as much.
        private const double Tolerance = 5e-4;

        internal static Leg Of(Body part, SheetFace face, PanelInPlace panel, double wavenumber, long fewPairs)
        {
            if ((long)part.Points.Length * panel.Observers.Points.Length <= fewPairs)
            {
                return new Leg(part, face, panel, wavenumber, null, null);
            }

            return LatticeLeg.Of(part, panel, wavenumber, Tolerance) is { } even
                ? new Leg(part, face, panel, wavenumber, null, even)
                : new Leg(part, face, panel, wavenumber, FieldTransfer.Between(part.Tree, panel.Observers.Tree, wavenumber, Tolerance), null);
        }

        internal void Add(CurrentSamples whole, FieldSample[] fields)
        {
            if (Even is not null)
            {
                Even.Add(Part, whole, fields);
                return;
            }

            if (Transfer is not null)
            {
                Transfer.Add(whole, fields);
                return;
            }

            FieldSample[] own = new FieldSample[fields.Length];
            RadiatedField.EvaluateMap(Part.Chosen(whole), Wavenumber, Panel.Observers.Points, own);
            for (int i = 0; i < own.Length; i++)
            {
                fields[i] = fields[i].Plus(own[i]);
            }
        }
    }

    /// <summary>Between panels with the same cells that stand parallel: from cell to cell by the lattice, to the rim as ever.</summary>
    private sealed record LatticeLeg(LatticeTransfer ToCells, FieldTransfer? ToRim, int Cells)
    {
        // Farther apart than they are long, fewer nodes than cells will do, and that is sooner done.
        internal static LatticeLeg? Of(Body part, PanelInPlace panel, double wavenumber, double tolerance) =>
            part.Lattice is { } sources && panel.Listening.Lattice is { } observers && (observers.Middle - sources.Middle).Length < sources.Side
            && LatticeTransfer.Between(sources, observers, wavenumber) is { } toCells
                ? new LatticeLeg(toCells, panel.Rim is { } rim ? FieldTransfer.Between(part.Tree, rim.Tree, wavenumber, tolerance) : null, observers.Count)
                : null;

        internal void Add(Body part, CurrentSamples whole, FieldSample[] fields)
        {
            ToCells.Add(part.Chosen(whole), fields.AsMemory(0, Cells));
            ToRim?.Add(whole, fields.AsMemory(Cells));
        }
    }
}
