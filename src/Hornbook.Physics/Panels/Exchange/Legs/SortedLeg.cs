using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Transfers;

namespace Hornbook.Physics.Panels.Exchange.Legs;

/// <summary>By pairs of boxes of samples. At the cells of metal the magnetic field is enough; its rim needs both.</summary>
internal sealed class SortedLeg : Leg
{
    private readonly FieldTransfer _toAll;
    private readonly FieldTransfer? _toRim;
    private readonly int _count;

    /// <param name="part">What sends.</param>
    /// <param name="panel">What receives.</param>
    /// <param name="wavenumber">k [1/m].</param>
    /// <param name="use">What it is for.</param>
    internal SortedLeg(Body part, PanelInPlace panel, double wavenumber, WayUse use)
    {
        bool isSplit = use.OnlyJumps && panel.NeedsOnlyMagnetic;
        Body all = isSplit ? panel.Listening : panel.Observers;
        _count = all.Points.Length;
        _toAll = FieldTransfer.Between(part.Tree, all.Tree, wavenumber, use.Tolerance, onlyMagnetic: isSplit);
        _toRim = isSplit && panel.Rim is { } rim ? FieldTransfer.Between(part.Tree, rim.Tree, wavenumber, use.Tolerance) : null;
    }

    /// <inheritdoc/>
    internal override void Add(CurrentSamples whole, FieldSample[] fields)
    {
        _toAll.Add(whole, fields.AsMemory(0, _count));
        _toRim?.Add(whole, fields.AsMemory(_count));
    }
}
