using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Files.Format;

/// <summary>The keys of detector, amplifier and tone.</summary>
internal static class DetectionFormat
{
    internal const string Square = "square";
    internal const string Junction = "junction";
    internal const string PowerLaw = "power";
    internal const string Diode = "diode";
    internal const string Table = "table";
    internal const string Linear = "linear";
    internal const string Exponential = "exponential";

    private static readonly KeyRule Sensitivity = new(
        "sensitivity", new QuantityRule(Quantity.Sensitivity, "0.01 V/W", "1000 mV/µW", "\"0.5 mV/µW\""), "Volts for each watt in the guide, at weak waves.");

    private static readonly KeyRule VideoResistance = new("video_resistance", Resistance("1 ohm", "\"8 kohm\""), "Resistance that the amplifier sees.");

    /// <summary>Of an amplifier.</summary>
    internal static RatioRule Gain { get; } = new(1e-3, 1e7, "500", Decibels: true);

    /// <summary>Of a tone that goes with the voltage.</summary>
    internal static QuantityRule LinearSlope { get; } = new(Quantity.ToneSlope, "-20 kHz/V", "20 kHz/V", "\"180 Hz/V\"");

    /// <summary>Of a tone whose octaves go with the voltage.</summary>
    internal static QuantityRule OctaveSlope { get; } = new(Quantity.OctaveSlope, "-20 oct/V", "20 oct/V", "\"0.5 oct/V\"");

    private static readonly KeyRule Ideality = new("ideality", new RatioRule(1.0, 3.0, "1.06"), "Ideality factor of the junction.", "1");

    /// <summary>The detector.</summary>
    internal static TableShape Detector { get; } = new(
        "the detector",
        new KeyRule("temperature", new QuantityRule(Quantity.Temperature, "200 K", "400 K", "\"20 degC\""), "Of the detector.", "\"20 degC\""))
    {
        Kind = new KeyRule("law", new ChoiceRule(Junction, Square, PowerLaw, Diode, Table), "What is known of the detector."),
        Variants =
        [
            new(Square, Sensitivity, VideoResistance),
            new(Junction, Sensitivity, VideoResistance, Ideality),
            new(PowerLaw, PowerKeys),
            new(Diode, DiodeKeys),
            new(Table, VideoResistance, new("points", new ListRule(new TableRule(Point), 3, 500, PointsExample), "What was set and what was read.")),
        ],
    };

    /// <summary>The amplifier.</summary>
    internal static TableShape Amplifier { get; } = new(
        "the amplifier",
        new("gain", Gain, "Voltage gain: a pure number, or in dB."),
        new("offset", Volts("-100 V", "\"0 mV\""), "Added at the output.", "\"0 V\""),
        new("lowest", Volts("-100 V", "\"0 V\""), "Lowest output voltage.", "\"0 V\""),
        new("highest", Volts("-100 V", "\"8 V\""), "Highest output voltage."),
        new("noise", new QuantityRule(Quantity.NoiseDensity, "0 nV/√Hz", "100 µV/√Hz", "\"12 nV/√Hz\""), "Voltage noise at the input."),
        new("bandwidth", new QuantityRule(Quantity.Frequency, "0.01 Hz", "1 MHz", "\"30 Hz\""), "Noise bandwidth: the slower, the steadier the tone."));

    /// <summary>The tone.</summary>
    internal static TableShape Tone { get; } = new(
        "the tone",
        new("at_zero", Hertz("\"110 Hz\""), "Pitch at zero volts."),
        new("lowest", Hertz("\"60 Hz\""), "Lowest pitch that the converter gives.", "\"20 Hz\""),
        new("highest", Hertz("\"3 kHz\""), "Highest pitch that the converter gives.", "\"20 kHz\""))
    {
        Kind = new KeyRule("law", new ChoiceRule(Linear, Exponential), "Equal steps of voltage are equal steps of hertz, or of pitch."),
        Variants =
        [
            new(Linear, new KeyRule("slope", LinearSlope, "Hertz for each volt; not 0.")),
            new(Exponential, new KeyRule("slope", OctaveSlope, "Octaves for each volt; not 0.")),
        ],
    };

    private const string PointsExample = "[{ power = \"1 µW\", voltage = \"0.5 mV\" }, { power = \"10 µW\", voltage = \"4.9 mV\" }, { power = \"100 µW\", voltage = \"40 mV\" }]";

    private static KeyRule[] PowerKeys =>
    [
        Sensitivity,
        VideoResistance,
        new("exponent", new RatioRule(0.1, 2.0, "0.9"), "Volts go as this power of the watts: 1 square, 0.5 linear."),
        new("at", new QuantityRule(Quantity.Power, "1 nW", "1 W", "\"20 µW\""), "Power at which the sensitivity was measured."),
    ];

    private static KeyRule[] DiodeKeys =>
    [
        new("saturation_current", new QuantityRule(Quantity.Current, "0.001 pA", "1 mA", "\"3 µA\""), "Of the junction, I_s."),
        Ideality,
        new("series_resistance", Resistance("0 ohm", "\"25 ohm\""), "Of the diode, R_s.", "\"0 ohm\""),
        new("junction_capacitance", new QuantityRule(Quantity.Capacitance, "0 pF", "1 nF", "\"0.18 pF\""), "At no bias, C_j.", "\"0 pF\""),
        new("breakdown", Volts("0.1 V", "\"3.8 V\""), "Reverse breakdown voltage.", "unlimited"),
        new("source_resistance", Resistance("1 ohm", "\"50 ohm\""), "From which the mount drives the diode.", "\"50 ohm\""),
        new("load_resistance", Resistance("1 ohm", "\"1 Mohm\""), "That loads the direct voltage.", "\"1 Mohm\""),
        new("mount_efficiency", new RatioRule(0.001, 1.0, "0.5"), "Share of the power in the guide that reaches the diode.", "1"),
    ];

    private static TableShape Point => new(
        "the point",
        new("power", new QuantityRule(Quantity.Power, "1 pW", "100 W", "\"10 µW\""), "Power in the guide."),
        new("voltage", new QuantityRule(Quantity.Voltage, "1 nV", "100 V", "\"4.9 mV\""), "Voltage that was read."));

    private static QuantityRule Resistance(string lowest, string example) => new(Quantity.Resistance, lowest, "1000 Mohm", example);

    private static QuantityRule Volts(string lowest, string example) => new(Quantity.Voltage, lowest, "100 V", example);

    private static QuantityRule Hertz(string example) => new(Quantity.Frequency, "1 Hz", "20 kHz", example);
}
