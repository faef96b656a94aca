namespace Hornbook.Physics.Detection;

/// <summary>An instrumentation amplifier between detector and tone.</summary>
/// <param name="Gain">Voltage gain [-]; &gt; 0.</param>
/// <param name="Offset">Added at the output [V].</param>
/// <param name="LowerRail">Lowest output voltage [V].</param>
/// <param name="UpperRail">Highest output voltage [V]; &gt; lower rail.</param>
/// <param name="NoiseDensity">Input voltage noise [V/√Hz]; ≥ 0.</param>
/// <param name="Bandwidth">Noise bandwidth [Hz]; &gt; 0.</param>
public sealed record Amplifier(double Gain, double Offset, double LowerRail, double UpperRail, double NoiseDensity, double Bandwidth);
