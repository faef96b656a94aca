namespace Hornbook.Commands.Reports;

/// <summary>A layer of a panel, and whether its material is known at the frequency.</summary>
internal sealed record PanelLayerReport(string Material, double ThicknessM, double PermittivityRatio, double LossPermittivityRatio, bool IsKnownHere);
