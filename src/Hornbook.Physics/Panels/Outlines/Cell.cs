namespace Hornbook.Physics.Panels.Outlines;

/// <summary>A small piece of a panel, which one sample stands for; in the panel's own frame.</summary>
/// <param name="Centre">Its centre of area [m].</param>
/// <param name="Normal">Unit vector out of the front face.</param>
/// <param name="Across">Unit vector in the sheet, across the strips; along them is Normal × Across.</param>
/// <param name="Area">The area that its sample stands for [m²].</param>
public readonly record struct Cell(Vector Centre, Vector Normal, Vector Across, double Area);
