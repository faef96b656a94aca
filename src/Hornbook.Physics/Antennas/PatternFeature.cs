namespace Hornbook.Physics.Antennas;

/// <summary>A minimum or a lobe beside the beam.</summary>
/// <param name="Angle">Off the axis [rad], to a quarter of a degree.</param>
/// <param name="Level">Power over that on the axis [-].</param>
public sealed record PatternFeature(double Angle, double Level);
