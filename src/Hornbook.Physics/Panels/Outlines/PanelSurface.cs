namespace Hornbook.Physics.Panels.Outlines;

/// <summary>The surface of a panel in its own frame: flat in the y-z plane with its centre at the origin, or bent out of it.</summary>
public abstract class PanelSurface
{
    /// <summary>Extent along its own y [m].</summary>
    public abstract double Width { get; }

    /// <summary>Extent along its own z [m].</summary>
    public abstract double Height { get; }

    /// <summary>Where the sheet ends, piece by piece.</summary>
    public abstract IReadOnlyList<Rim> Rims { get; }

    /// <summary>The surface in small pieces.</summary>
    /// <param name="spacing">The largest side of a piece [m]; finite, &gt; 0.</param>
    public abstract IReadOnlyList<Cell> Cells(double spacing);
}
