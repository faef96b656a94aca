using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Lattices;
using Hornbook.Physics.Radiation.Transfers;

namespace Hornbook.Physics.Panels.Exchange.Legs;

/// <summary>Between panels with the same cells that stand parallel: from cell to cell by the lattice, to the rim by boxes.</summary>
internal sealed class LatticeLeg : Leg
{
    private readonly Body _part;
    private readonly LatticeTransfer _toCells;
    private readonly FieldTransfer? _toRim;
    private readonly int _cells;

    private LatticeLeg(Body part, LatticeTransfer toCells, FieldTransfer? toRim, int cells) => (_part, _toCells, _toRim, _cells) = (part, toCells, toRim, cells);

    /// <summary>Null where the cells are not the same or the panels farther apart than they are long: then fewer nodes than cells will do, and that is sooner done.</summary>
    internal static LatticeLeg? Of(Body part, PanelInPlace panel, double wavenumber, double tolerance) =>
        part.Lattice is { } sources && panel.Listening.Lattice is { } observers && (observers.Middle - sources.Middle).Length < sources.Side
        && LatticeTransfer.Between(sources, observers, wavenumber) is { } toCells
            ? new LatticeLeg(part, toCells, panel.Rim is { } rim ? FieldTransfer.Between(part.Tree, rim.Tree, wavenumber, tolerance) : null, observers.Count)
            : null;

    /// <inheritdoc/>
    internal override void Add(CurrentSamples whole, FieldSample[] fields)
    {
        _toCells.Add(_part.Chosen(whole), fields.AsMemory(0, _cells));
        _toRim?.Add(whole, fields.AsMemory(_cells));
    }
}
