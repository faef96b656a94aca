namespace Hornbook.Bench.Files.Quantities;

/// <summary>What a number measures, and the units in which text may state it.</summary>
/// <param name="Name">One word or two: "length".</param>
/// <param name="Units">The units that fit, the customary one first.</param>
/// <param name="Resolution">The step to which a program's edit rounds, in SI; 0: six significant digits.</param>
public sealed record Quantity(string Name, IReadOnlyList<Unit> Units, double Resolution = 0.0)
{
    /// <summary>Length [m].</summary>
    public static Quantity Length { get; } = new(
        "length",
        [
            Small("cm", 1e2), Small("mm", 1e3), new("m", 1.0), Small("µm", 1e6, "um"),
            new("in", 0.0254, UnitScale.Linear, "inch"),
        ],
        1e-4);

    /// <summary>Angle [rad].</summary>
    public static Quantity Angle { get; } = new(
        "angle", [new("deg", Math.PI / 180.0, UnitScale.Linear, "°"), new("rad", 1.0)], Math.PI / 1800.0);

    /// <summary>Frequency [Hz].</summary>
    public static Quantity Frequency { get; } = new("frequency", [new("GHz", 1e9), new("MHz", 1e6), new("kHz", 1e3), new("Hz", 1.0)]);

    /// <summary>Power [W].</summary>
    public static Quantity Power { get; } = new(
        "power", [Small("mW", 1e3), new("W", 1.0), Small("µW", 1e6, "uW"), Small("nW", 1e9), new("dBm", 1e-3, UnitScale.PowerLevel)]);

    /// <summary>Voltage [V].</summary>
    public static Quantity Voltage { get; } = new("voltage", [new("V", 1.0), Small("mV", 1e3), Small("µV", 1e6, "uV")]);

    /// <summary>Ratio of two voltages, in decibels [-].</summary>
    public static Quantity VoltageRatio { get; } = new("ratio", [new("dB", 1.0, UnitScale.AmplitudeLevel)]);

    /// <summary>Voltage noise density [V/√Hz].</summary>
    public static Quantity NoiseDensity { get; } = new(
        "noise density",
        [
            Small("nV/√Hz", 1e9, "nV/rtHz", "nV/sqrt(Hz)"), Small("µV/√Hz", 1e6, "uV/√Hz", "µV/rtHz", "uV/rtHz", "µV/sqrt(Hz)", "uV/sqrt(Hz)"),
        ]);

    /// <summary>Resistance [Ω].</summary>
    public static Quantity Resistance { get; } = new(
        "resistance", [new("ohm", 1.0, UnitScale.Linear, "Ω"), new("kohm", 1e3, UnitScale.Linear, "kΩ"), new("Mohm", 1e6, UnitScale.Linear, "MΩ")]);

    /// <summary>Current [A].</summary>
    public static Quantity Current { get; } = new(
        "current", [Small("µA", 1e6, "uA"), Small("nA", 1e9), Small("pA", 1e12), Small("mA", 1e3), new("A", 1.0)]);

    /// <summary>Capacitance [F].</summary>
    public static Quantity Capacitance { get; } = new("capacitance", [Small("pF", 1e12), Small("fF", 1e15), Small("nF", 1e9)]);

    /// <summary>Absolute temperature [K].</summary>
    public static Quantity Temperature { get; } = new("temperature", [new("K", 1.0), new("degC", 1.0, UnitScale.Celsius, "°C")]);

    /// <summary>Volts from a detector for each watt [V/W].</summary>
    public static Quantity Sensitivity { get; } = new(
        "sensitivity",
        [new("mV/µW", 1e3, UnitScale.Linear, "mV/uW"), new("V/W", 1.0, UnitScale.Linear, "mV/mW"), new("µV/nW", 1e3, UnitScale.Linear, "uV/nW")]);

    /// <summary>Slope of a linear tone [Hz/V].</summary>
    public static Quantity ToneSlope { get; } = new("tone slope", [new("Hz/V", 1.0), new("kHz/V", 1e3)]);

    /// <summary>Slope of an exponential tone, octaves for each volt [1/V].</summary>
    public static Quantity OctaveSlope { get; } = new("octave slope", [new("oct/V", 1.0)]);

    /// <summary>Duration [s].</summary>
    public static Quantity Duration { get; } = new("duration", [new("min", 60.0), new("s", 1.0)]);

    /// <summary>Every quantity that text may state.</summary>
    public static IReadOnlyList<Quantity> All { get; } =
    [
        Length, Angle, Frequency, Power, Voltage, VoltageRatio, NoiseDensity, Resistance, Current, Capacitance, Temperature, Sensitivity,
        ToneSlope, OctaveSlope, Duration,
    ];

    /// <summary>The unit of a spelling, or null where none of this quantity is written so.</summary>
    public Unit? FindUnit(string spelling) => Units.FirstOrDefault(unit => unit.IsWritten(spelling));

    private static Unit Small(string symbol, double inOne, params string[] alsoWritten) => new(symbol, inOne, UnitScale.Divided, alsoWritten);
}
