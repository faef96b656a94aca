namespace Hornbook.Physics.Exposure;

/// <summary>A point of a keep-out contour.</summary>
/// <param name="Angle">Off the axis in its plane, positive to the left or up [rad]; from 0 to 2π.</param>
/// <param name="Distance">From the centre of the mouth [m]; 0 where the limit is met nowhere.</param>
public readonly record struct KeepOutPoint(double Angle, double Distance);
