using Hornbook.Physics.Panels.Edges;
using Hornbook.Physics.Panels.Outlines;

namespace Hornbook.Physics.Panels.Exchange.Symmetries;

/// <summary>The part of a panel whose currents are worked out; those of the rest are images of them. In the panel's own frame. Immutable.</summary>
internal sealed class PanelPart
{
    /// <param name="cells">The cells of the part; at least one.</param>
    /// <param name="edges">The edge currents of these cells; null where the sheet has none.</param>
    /// <param name="places">Which cells of the panel they are.</param>
    /// <param name="rest">Every other cell of the panel.</param>
    internal PanelPart(Cell[] cells, EdgeLinks? edges, int[] places, CellImage[] rest)
    {
        (Cells, Edges, Places, Rest) = (cells, edges, places, rest);
        Listening = Body.Own(Array.ConvertAll(cells, cell => cell.Centre));
        Rim = edges is { Feet.Length: > 0 } ? Body.Own(Array.ConvertAll(edges.Feet, foot => foot.Place)) : null;
        Observers = Rim is null ? Listening : Body.Own([.. Listening.Points, .. Rim.Points]);
    }

    /// <summary>The cells of the part.</summary>
    internal Cell[] Cells { get; }

    /// <summary>The edge currents of these cells; null where the sheet has none.</summary>
    internal EdgeLinks? Edges { get; }

    /// <summary>Which cells of the panel they are.</summary>
    internal int[] Places { get; }

    /// <summary>Every other cell of the panel.</summary>
    internal CellImage[] Rest { get; }

    /// <summary>Whether it is all of the panel.</summary>
    internal bool IsWhole => Rest.Length == 0;

    /// <summary>The centres of the cells.</summary>
    internal Body Listening { get; }

    /// <summary>The feet on the rim, where edge currents begin; null where there are none.</summary>
    internal Body? Rim { get; }

    /// <summary>Where the panel takes in fields: the centres of the cells, then the feet on the rim.</summary>
    internal Body Observers { get; }
}
