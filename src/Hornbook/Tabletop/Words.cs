using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Detection;

namespace Hornbook.Tabletop;

/// <summary>Sentences of the page that depend on what is read.</summary>
public static class Words
{
    public static string Name(BenchEnd end) => end == BenchEnd.Source ? "Source" : "Receiver";

    /// <summary>What the tone does, for one who only hears it.</summary>
    public static string State(ToneState state) => state switch
    {
        ToneState.Clipped => "At the limit: stronger would sound the same.",
        ToneState.Drowned => "Lost in the noise, as if nothing came.",
        _ => "The tone follows the wave.",
    };

    public static string Trust(TrustLevel level) => level switch
    {
        TrustLevel.Good => "To be believed",
        TrustLevel.Rough => "Roughly right",
        _ => "A guide only",
    };

    /// <summary>The reading in one spoken sentence.</summary>
    public static string Spoken(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        string state = reading.Heard.State == ToneState.Clear ? string.Empty : " " + State(reading.Heard.State);
        return $"Tone {Shown.Tone(reading.Heard.Tone)}, amplifier {Shown.Voltage(reading.Heard.AmplifierVoltage)}, "
            + $"link {Shown.Level(Decibels.FromRatio(reading.Link))}.{state}";
    }

    /// <summary>A turn as a person would say it.</summary>
    public static string Turned(double turn) => Sided(turn, "to the left", "to the right", "straight along the bench");

    public static string Tilted(double tilt) => Sided(tilt, "up", "down", "level");

    public static string Rolled(double roll) => Sided(roll, "clockwise seen from behind", "anticlockwise seen from behind", "upright");

    private static string Sided(double angle, string positive, string negative, string none) =>
        Math.Abs(angle) < 1e-3 ? none : $"{Shown.Angle(Math.Abs(angle))} {(angle > 0.0 ? positive : negative)}";
}
