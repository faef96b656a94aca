namespace Hornbook.Physics.Panels.Choosing;

/// <summary>A grid that grants a wish, and how far its metal could be off.</summary>
/// <param name="Figures">The grid: its metal in the middle of what would do.</param>
/// <param name="NarrowestMetal">At this period the least that grants the wish [m].</param>
/// <param name="WidestMetal">At this period the most that does [m].</param>
public sealed record GridChoice(GridFigures Figures, double NarrowestMetal, double WidestMetal)
{
    /// <summary>How far the metal may be off before the wish is not granted any more, ± [m]; 0 where a single step of it does.</summary>
    public double Room => Math.Min(Figures.Metal - NarrowestMetal, WidestMetal - Figures.Metal);
}

/// <summary>The answer to a wish for a grid.</summary>
/// <param name="Found">Grids that grant it, the most forgiving first; empty where there is none.</param>
/// <param name="Nearest">What comes nearest, for where there is none; null where nothing can be made at all.</param>
public sealed record GridChoices(IReadOnlyList<GridChoice> Found, GridFigures? Nearest);
