using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Lattices;
using Hornbook.Physics.Radiation.Transfers;

namespace Hornbook.Physics.Panels.Exchange.Legs;

/// <summary>Between panels whose cells lie on lattices and that stand parallel: from cell to cell by what the lattices have in common, to the rim by boxes.</summary>
internal sealed class LatticeLeg : Leg
{
    // Of the longer panel. Measured: docs/performance.md.
    private const double NearEnough = 0.5;

    private readonly Body _part;
    private readonly Action<CurrentSamples, Memory<FieldSample>> _toCells;
    private readonly FieldTransfer? _toRim;
    private readonly int _cells;

    private LatticeLeg(Body part, Action<CurrentSamples, Memory<FieldSample>> toCells, FieldTransfer? toRim, int cells) =>
        (_part, _toCells, _toRim, _cells) = (part, toCells, toRim, cells);

    /// <summary>Null where the lattices have nothing in common or stand too far apart.</summary>
    internal static LatticeLeg? Between(Body part, PanelInPlace panel, double wavenumber, WayUse use)
    {
        if (part.Lattice is not { } sources || panel.Listening.Lattice is not { } observers)
        {
            return null;
        }

        // Panels farther apart than this can do with fewer nodes than cells, and that is sooner done.
        double apart = (observers.Middle - sources.Middle).Length;
        Action<CurrentSamples, Memory<FieldSample>>? toCells =
            apart < sources.Side && LatticeTransfer.Between(sources, observers, wavenumber) is { } even ? even.Add
            : apart < NearEnough * Math.Max(sources.Side, observers.Side) && TurnedTransfer.Between(sources, observers, wavenumber, Asked(panel, use)) is { } turned ? turned.Add
            : null;
        return toCells is null ? null : new LatticeLeg(part, toCells, panel.Rim is { } rim ? FieldTransfer.Between(part.Tree, rim.Tree, wavenumber, use.Tolerance) : null, observers.Count);
    }

    // The jumps of metal are those of the magnetic field along it, and the two are parallel.
    private static FieldPart Asked(PanelInPlace panel, WayUse use) => use.OnlyJumps && panel.NeedsOnlyMagnetic ? FieldPart.MagneticAlong : FieldPart.Whole;

    /// <inheritdoc/>
    internal override void Add(CurrentSamples whole, FieldSample[] fields)
    {
        _toCells(_part.Chosen(whole), fields.AsMemory(0, _cells));
        _toRim?.Add(whole, fields.AsMemory(_cells));
    }
}
