using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Radiation;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>A panel in fewer, larger cells, and how its currents go down to them and up again. Immutable.</summary>
/// <remarks>
/// Down, the moment of a cell goes to the nearest larger one. Up, the density is that of the nearest four, weighed with one over the squared distance [Shepard1968]:
/// with that of the nearest alone, steps and all, resonant panels took half as many sweeps again.
/// </remarks>
internal sealed class CoarsePanel
{
    private const int Neighbours = 4;

    // Of each cell, the nearest first.
    private readonly (int Parent, double Weight)[] _links;

    /// <param name="fine">The panel's cells.</param>
    /// <param name="panel">The same panel in larger cells.</param>
    /// <param name="spacing">The largest side of these [m].</param>
    internal CoarsePanel(Cell[] fine, PreparedPanel panel, double spacing)
    {
        Panel = panel;
        STRtree<int> tree = new();
        for (int i = 0; i < panel.Cells.Length; i++)
        {
            tree.Insert(new Envelope(new Coordinate(panel.Cells[i].Centre.Y, panel.Cells[i].Centre.Z)), i);
        }

        _links = [.. fine.SelectMany(cell => Links(cell, panel.Cells, tree, spacing))];
    }

    /// <summary>The panel in larger cells.</summary>
    internal PreparedPanel Panel { get; }

    /// <summary>The moments of the larger cells.</summary>
    /// <param name="currents">Of the cells.</param>
    /// <param name="place">The larger cells where they stand.</param>
    internal CurrentSamples Down(CurrentSamples currents, Body place) => Each(currents, place, Down);

    /// <summary>The moments of the cells.</summary>
    /// <param name="currents">Of the larger cells.</param>
    /// <param name="place">The cells where they stand.</param>
    internal CurrentSamples Up(CurrentSamples currents, Body place) => Each(currents, place, Up);

    private delegate void Moments(ReadOnlySpan<ComplexVector> from, Span<ComplexVector> to);

    private static CurrentSamples Each(CurrentSamples currents, Body place, Moments moments)
    {
        ComplexVector[] electric = new ComplexVector[place.Points.Length];
        moments(currents.Electric, electric);
        ComplexVector[]? magnetic = currents.FlowingMagnetic.IsEmpty ? null : new ComplexVector[place.Points.Length];
        moments(currents.FlowingMagnetic, magnetic);
        return CurrentSamples.Keeping(place.Points, electric, magnetic);
    }

    private void Down(ReadOnlySpan<ComplexVector> from, Span<ComplexVector> to)
    {
        for (int i = 0; i < from.Length; i++)
        {
            to[_links[i * Neighbours].Parent] += from[i];
        }
    }

    private void Up(ReadOnlySpan<ComplexVector> from, Span<ComplexVector> to)
    {
        for (int i = 0; i < to.Length * Neighbours; i++)
        {
            (int parent, double weight) = _links[i];
            to[i / Neighbours] += from[parent] * weight;
        }
    }

    private static (int Parent, double Weight)[] Links(Cell cell, Cell[] parents, STRtree<int> tree, double spacing)
    {
        (int Parent, double Weight)[] near = [.. Near(cell, tree, spacing)
            .Select(i => (Parent: i, Distance: (parents[i].Centre - cell.Centre).Length)).OrderBy(link => link.Distance).Take(Neighbours)
            .Select(link => (link.Parent, 1.0 / Math.Max(link.Distance * link.Distance, 1e-12 * spacing * spacing)))];
        double sum = near.Sum(link => link.Weight);
        return [.. Enumerable.Range(0, Neighbours).Select(i => i < near.Length
            ? (near[i].Parent, near[i].Weight / sum * cell.Area / parents[near[i].Parent].Area)
            : (near[0].Parent, 0.0))];
    }

    // Seen from the front. Slivers may stand far from the nearest one.
    private static IList<int> Near(Cell cell, STRtree<int> tree, double spacing)
    {
        for (double reach = 1.5 * spacing; true; reach *= 2.0)
        {
            Envelope box = new(cell.Centre.Y - reach, cell.Centre.Y + reach, cell.Centre.Z - reach, cell.Centre.Z + reach);
            if (tree.Query(box) is { Count: > 0 } found)
            {
                return found;
            }
        }
    }
}
