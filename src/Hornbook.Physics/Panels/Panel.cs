using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Physics.Panels;

/// <summary>A panel: its surface and what it is made of.</summary>
/// <param name="Surface">Size, outline, openings and bend.</param>
/// <param name="Sheet">What it is made of.</param>
public sealed record Panel(PanelSurface Surface, ISheet Sheet);
