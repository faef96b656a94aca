using System.Globalization;
using System.Text.Json.Serialization;
using Hornbook.Bench.Readings;
using Hornbook.Commands.Printing;
using Hornbook.Physics;
using Hornbook.Physics.Detection;

namespace Hornbook.Commands.Reports;

/// <summary>A reading for programs and people.</summary>
internal class ReadingReport(Reading reading)
{
    private readonly Note _nearest = Physics.Detection.Note.Nearest(reading.Heard.Tone);

    /// <summary>Power delivered into the receiver's guide over the power that the source's guide brings to its antenna.</summary>
    public double LinkDb { get; } = Decibels.FromRatio(reading.Link);

    /// <summary>The part of the link that both antennas' own reflections take.</summary>
    public double MismatchDb { get; } = Decibels.FromRatio(reading.Mismatch);

    /// <summary>The part of the link that both antennas' walls take.</summary>
    public double OhmicDb { get; } = Decibels.FromRatio(reading.OhmicEfficiency);

    /// <summary>Half width of the band from standing waves between the mouths.</summary>
    public double RippleDb { get; } = reading.RippleDb;

    public double ReceivedDbm { get; } = Decibels.PowerToDbm(reading.ReceivedPower);

    public double ReceivedW { get; } = reading.ReceivedPower;

    public double DetectorV { get; } = reading.Heard.DetectorVoltage;

    public double AmplifierV { get; } = reading.Heard.AmplifierVoltage;

    public double AmplifierNoiseV { get; } = reading.Heard.AmplifierNoise;

    public double ToneHz { get; } = reading.Heard.Tone;

    /// <summary>Nearest note of the equal-tempered scale.</summary>
    public string Note => _nearest.Name;

    /// <summary>How far the tone lies above that note.</summary>
    public double Cents => _nearest.Cents;

    /// <summary>Rms wander of the pitch.</summary>
    public double JitterCents { get; } = reading.Heard.JitterCents;

    public ToneState State { get; } = reading.Heard.State;

    public TrustLevel Trust { get; } = reading.Trust.Level;

    public string TrustReason { get; } = reading.Trust.Why;

    /// <summary>How often every panel answered to all others; null without panels.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public int? PanelSweepsCount { get; } = reading.Panels?.Sweeps;

    /// <summary>What is still missing of the currents on the panels, over the currents.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? PanelResidueRatio { get; } = reading.Panels?.Residue;

    /// <summary>How much the link may still move, where the panels have not settled.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? PanelUnsettledDb { get; } = reading.Panels is { IsSettled: false } unsettled ? unsettled.UnsettledDb : null;

    /// <summary>The reading as lines of a table with three columns.</summary>
    private protected void AddTo(TextTable table)
    {
        table.Row("Link", Show.Db(LinkDb), $"± {Show.Db(RippleDb)} as waves stand between the mouths{(PanelSweepsCount is null ? string.Empty : " and panels")}; of it {Show.FineDb(MismatchDb)} from reflections, {Show.FineDb(OhmicDb)} in walls");
        table.Row("Received", Show.Db(ReceivedDbm, "dBm"), Show.Si(ReceivedW, "W"));
        table.Row("Detector", Show.Si(DetectorV, "V"), string.Empty);
        table.Row("Amplifier", Show.Si(AmplifierV, "V"), $"noise {Show.Si(AmplifierNoiseV, "V")}");
        table.Row("Tone", Show.Hertz(ToneHz), $"{NoteText()}, {StateText()}");
        if (PanelSweepsCount is { } sweeps)
        {
            table.Row("Panels", sweeps == 1 ? "1 sweep" : $"{sweeps} sweeps", Settling());
        }

        table.Row("Trust", Trust.ToString().ToLowerInvariant(), TrustReason);
    }

    private string Settling() => PanelUnsettledDb is { } moved
        ? $"NOT SETTLED: the wave goes to and fro between panels, and the link may still move by {Show.FineDb(moved)}"
        : PanelSweepsCount == 1 ? "one panel alone: there is nothing to settle"
        : $"settled: {Show.Fixed(100.0 * (PanelResidueRatio ?? 0.0), 2, "%")} of the currents on them is still missing";

    private string NoteText() => string.Create(CultureInfo.InvariantCulture, $"{Note} {Cents:+0;-0;±0} cents");

    private string StateText() => State switch
    {
        ToneState.Clipped => "CLIPPED: a stronger wave sounds the same",
        ToneState.Drowned => "LOST IN NOISE: it sounds as if nothing came",
        _ => $"wanders by {Show.Fixed(JitterCents, 1, "cents")}",
    };
}
