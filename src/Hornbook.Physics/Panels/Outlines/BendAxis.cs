namespace Hornbook.Physics.Panels.Outlines;

/// <summary>The direction of the cylinder to which a panel is bent.</summary>
public enum BendAxis
{
    /// <summary>Across the strips: lower and upper edge come forward, or go back.</summary>
    Y,

    /// <summary>Along the strips: left and right edge come forward, or go back.</summary>
    Z,
}
