namespace Hornbook.Physics.Detection;

/// <summary>The weakest wave that a detector shows, from the thermal noise of its video resistance alone.</summary>
public static class WeakSignal
{
    /// <summary>Rms thermal noise, √(4 k T R_v B) [V] [Nyquist1928].</summary>
    /// <param name="videoResistance">R_v [Ω]; finite, ≥ 0.</param>
    /// <param name="temperature">T [K]; finite, &gt; 0.</param>
    /// <param name="bandwidth">B [Hz]; finite, &gt; 0.</param>
    public static double ThermalNoise(double videoResistance, double temperature, double bandwidth) => Math.Sqrt(
        4.0 * Constants.Boltzmann * Require.Positive(temperature) * Require.NotNegative(videoResistance) * Require.Positive(bandwidth));

    /// <summary>Noise-equivalent power in one hertz, √(4 k T R_v)/γ [W/√Hz].</summary>
    /// <param name="sensitivity">γ [V/W]; finite, &gt; 0.</param>
    /// <param name="videoResistance">R_v [Ω]; finite, ≥ 0.</param>
    /// <param name="temperature">T [K]; finite, &gt; 0.</param>
    public static double NoiseEquivalentPower(double sensitivity, double videoResistance, double temperature) =>
        ThermalNoise(videoResistance, temperature, 1.0) / Require.Positive(sensitivity);

    /// <summary>Tangential signal: the power that lifts the lower edge of the noise band to where its upper edge was, 2.5 times the rms noise [W].</summary>
    /// <remarks>2.5 in voltage (8 dB) is the usual convention; read from a screen it depends on the observer.</remarks>
    /// <param name="sensitivity">γ [V/W]; finite, &gt; 0.</param>
    /// <param name="videoResistance">R_v [Ω]; finite, ≥ 0.</param>
    /// <param name="temperature">T [K]; finite, &gt; 0.</param>
    /// <param name="bandwidth">B [Hz]; finite, &gt; 0.</param>
    public static double TangentialPower(double sensitivity, double videoResistance, double temperature, double bandwidth) =>
        2.5 * ThermalNoise(videoResistance, temperature, bandwidth) / Require.Positive(sensitivity);
}
