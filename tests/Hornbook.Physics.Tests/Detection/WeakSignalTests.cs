using Hornbook.Physics.Detection;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Detection;

public sealed class WeakSignalTests
{
    // invented detector of the size usual for zero-bias diodes: 40 mV/µW, 8771 Ω, 295 K, 1 MHz
    private const double Sensitivity = 40e3;
    private const double VideoResistance = 8771.0;

    [Fact]
    public void Thermal_noise_is_that_of_Nyquist() =>
        // derived: √(4 × 1.380649e-23 × 295 × 8771 × 1e6) = 11.95 µV
        Close.Relative(11.95e-6, WeakSignal.ThermalNoise(VideoResistance, 295.0, 1e6), 5e-4);

    [Fact]
    public void Tangential_power_is_two_and_a_half_times_the_noise() =>
        // derived: 10 log10(2.5 × 11.95 µV/(40 mV/µW)/1 mW) = −61.3 dBm; the factor 2.5 from memory
        Close.Absolute(-61.3, Decibels.PowerToDbm(WeakSignal.TangentialPower(Sensitivity, VideoResistance, 295.0, 1e6)), 0.05);

    [Fact]
    public void Noise_equivalent_power_is_a_third_of_a_picowatt() =>
        // derived: √(4 k T R_v)/γ = 0.30 pW/√Hz
        Close.Relative(0.30e-12, WeakSignal.NoiseEquivalentPower(Sensitivity, VideoResistance, 295.0), 0.01);

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    public void Rejects_a_sensitivity_that_is_not_positive(double wrong) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WeakSignal.NoiseEquivalentPower(wrong, VideoResistance, 295.0));
}
