using Hornbook.Physics.Detection;
using Hornbook.Tabletop;
using Xunit;

namespace Hornbook.Tests.Tabletop;

public sealed class ShownTests
{
    [Fact]
    public void Minus_is_a_true_minus_and_nothing_has_none()
    {
        Assert.Equal("\u221218.3 dB", Shown.Level(-18.31).ToString());
        Assert.Equal("0.0 dB", Shown.Level(-0.04).ToString());
        Assert.Equal("\u2212∞ dBm", Shown.PowerLevel(double.NegativeInfinity).ToString());
        Assert.Equal("– dB", Shown.Level(double.NaN).ToString());
    }

    [Theory]
    [InlineData(2.806, "2.81 V")]
    [InlineData(0.01399, "13.99 mV")]
    [InlineData(2.34e-5, "23.4 µV")]
    [InlineData(0.0, "0 V")]
    public void Voltages_choose_their_prefix(double volts, string text) => Assert.Equal(text, Shown.Voltage(volts).ToString());

    [Fact]
    public void Tones_are_whole_hertz_unless_they_are_low()
    {
        Assert.Equal("613 Hz", Shown.Tone(613.4).ToString());
        Assert.Equal("61.3 Hz", Shown.Tone(61.34).ToString());
    }

    [Fact]
    public void A_clearance_is_rounded_up() => Assert.Equal("108 cm", Shown.Clearance(1.0711, LengthUnit.Centimetre).ToString());

    [Fact]
    public void The_nearest_note_is_named_with_a_sharp_sign()
    {
        Note note = new(70, 0.0);
        Assert.Equal("A\u266F4 0 cents", Shown.NearestNote(note.Frequency).ToString());
        // derived: 10 cents are a factor of 2^(10/1200).
        Assert.Equal("A4 +10 cents", Shown.NearestNote(440.0 * Math.Pow(2.0, 10.0 / 1200.0)).ToString());
    }
}
