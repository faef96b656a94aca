namespace Hornbook.Physics.Panels.Outlines;

/// <summary>The surface of a panel in its own frame: flat in the y-z plane, or bent out of it with its middle at the origin.</summary>
public abstract class PanelSurface
{
    /// <summary>Extent along its own y [m].</summary>
    public abstract double Width { get; }

    /// <summary>Extent along its own z [m].</summary>
    public abstract double Height { get; }

    /// <summary>Whether all of it lies in the plane x = 0.</summary>
    public abstract bool IsFlat { get; }

    /// <summary>Where the sheet ends, piece by piece.</summary>
    public abstract IReadOnlyList<Rim> Rims { get; }

    /// <summary>The outline for drawing: closed loops of points [m], the first not repeated at the end; arcs in fine steps, openings as loops of their own.</summary>
    public abstract IReadOnlyList<IReadOnlyList<Vector>> Loops { get; }

    /// <summary>The surface in small pieces.</summary>
    /// <param name="spacing">The largest side of a piece [m]; finite, &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="spacing"/> is not finite and positive.</exception>
    public abstract IReadOnlyList<Cell> Cells(double spacing);

    /// <summary>The same for currents that run on smoothly up to the rim: with areas for which wider cells are as good, where the surface knows any.</summary>
    /// <inheritdoc cref="Cells"/>
    internal virtual IReadOnlyList<Cell> SmoothCells(double spacing) => Cells(spacing);
}
