namespace Hornbook.Physics.Detection;

/// <summary>A power that was set and the voltage that was read.</summary>
/// <param name="Power">In the guide [W]; finite, &gt; 0.</param>
/// <param name="Voltage">At the detector [V]; finite, &gt; 0.</param>
public readonly record struct CalibrationPoint(double Power, double Voltage);
