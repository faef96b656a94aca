using Hornbook.Physics.Panels.Edges;
using Hornbook.Physics.Panels.Outlines;

namespace Hornbook.Physics.Panels.Symmetries;

/// <summary>The part of a panel whose currents are worked out; those of the rest are images of them. Immutable.</summary>
/// <param name="Cells">The cells of the part, own frame.</param>
/// <param name="Edges">The edge currents of these cells; null where the sheet has none.</param>
/// <param name="Places">Which cells of the panel they are.</param>
/// <param name="Rest">Every other cell of the panel.</param>
internal sealed record PanelPart(Cell[] Cells, EdgeLinks? Edges, int[] Places, CellImage[] Rest)
{
    /// <summary>Whether it is all of the panel.</summary>
    internal bool IsWhole => Rest.Length == 0;
}
