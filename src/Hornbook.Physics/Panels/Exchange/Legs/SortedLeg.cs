using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Transfers;

namespace Hornbook.Physics.Panels.Exchange.Legs;

/// <summary>By pairs of boxes of samples. At the cells of metal the magnetic field is enough; its rim needs both.</summary>
internal sealed class SortedLeg : Leg
{
    // Where most pairs are summed directly. By nodes, cells and rim together cost hardly more than cells alone.
    private const double MostGain = 1.5;

    private readonly FieldTransfer _toCells;
    private readonly FieldTransfer? _toRim;
    private readonly int _count;

    /// <param name="part">What sends.</param>
    /// <param name="panel">What receives.</param>
    /// <param name="wavenumber">k [1/m].</param>
    /// <param name="use">What it is for.</param>
    internal SortedLeg(Body part, PanelInPlace panel, double wavenumber, WayUse use)
    {
        FieldTransfer whole = FieldTransfer.Between(part.Tree, panel.Observers.Tree, wavenumber, use.Tolerance);
        if (use.OnlyJumps && panel.NeedsOnlyMagnetic && whole.Gain < MostGain)
        {
            _count = panel.Listening.Points.Length;
            _toCells = FieldTransfer.Between(part.Tree, panel.Listening.Tree, wavenumber, use.Tolerance, FieldPart.Magnetic);
            _toRim = panel.Rim is { } rim ? FieldTransfer.Between(part.Tree, rim.Tree, wavenumber, use.Tolerance) : null;
        }
        else
        {
            (_count, _toCells) = (panel.Observers.Points.Length, whole);
        }
    }

    /// <inheritdoc/>
    internal override void Add(CurrentSamples whole, FieldSample[] fields)
    {
        _toCells.Add(whole, fields.AsMemory(0, _count));
        _toRim?.Add(whole, fields.AsMemory(_count));
    }
}
