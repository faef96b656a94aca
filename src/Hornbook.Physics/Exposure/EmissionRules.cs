using Hornbook.Physics.Guides;

namespace Hornbook.Physics.Exposure;

/// <summary>Rules about radiating in the bands where benches work, and what follows: a source is a transmitter.</summary>
public static class EmissionRules
{
    /// <summary>What holds whatever the numbers say.</summary>
    public const string Note =
        "A source with an antenna is a transmitter. In most countries radiating needs a licence or a device that is exempt from one; the local rule decides, and a licensed practitioner can say what it is.";

    private const string ShortRange = "CEPT ERC/REC 70-03, annex 6";
    private const string ShortRangeWho = "radiodetermination devices that meet the harmonised standard; countries deviate";
    private const string DisturbanceWho = "certified field-disturbance sensors; a classroom demonstration is not one of itself";

    /// <summary>The rules that the program knows.</summary>
    public static IReadOnlyList<EmissionRule> All { get; } =
    [
        new("us-field-disturbance-10ghz", "United States, 10.5 GHz motion sensors", "47 CFR 15.245", Megahertz(10500.0, 10550.0),
            EirpOfField(2.5, 3.0), DisturbanceWho, "2500 mV/m read in a copy of the text; the distance of 3 m from memory"),
        new("us-field-disturbance-24ghz", "United States, 24 GHz motion sensors", "47 CFR 15.245", Megahertz(24075.0, 24175.0),
            EirpOfField(2.5, 3.0), DisturbanceWho, "2500 mV/m read in a copy of the text; the distance of 3 m from memory"),
        new("cept-radiodetermination-9ghz", "Europe, 9.2 to 9.975 GHz short-range devices", ShortRange, Megahertz(9200.0, 9975.0), 0.025, ShortRangeWho, LimitTable.FromMemory),
        new("cept-radiodetermination-10ghz", "Europe, 10.5 GHz short-range devices", ShortRange, Megahertz(10500.0, 10600.0), 0.5, ShortRangeWho, LimitTable.FromMemory),
        new("cept-radiodetermination-13ghz", "Europe, 13.4 to 14 GHz short-range devices", ShortRange, Megahertz(13400.0, 14000.0), 0.025, ShortRangeWho, LimitTable.FromMemory),
        new("cept-radiodetermination-24ghz", "Europe, 24 GHz short-range devices", ShortRange, Megahertz(24050.0, 24250.0), 0.1, ShortRangeWho, LimitTable.FromMemory),
        new("amateur-3cm", "Amateur service, 3 cm band", "ITU Radio Regulations, article 5; 47 CFR 97.301", Megahertz(10000.0, 10500.0), null,
            "licensed radio amateurs, as secondary users", "10.0 to 10.5 GHz read in tables of allocations"),
    ];

    /// <summary>Those whose band holds a frequency [Hz].</summary>
    public static IEnumerable<EmissionRule> At(double frequency) => All.Where(r => r.Band.Contains(frequency));

    /// <summary>EIRP of an rms field strength at a distance in the far zone, 4πR²E²/η [W].</summary>
    /// <param name="strength">E [V/m], rms; finite, ≥ 0.</param>
    /// <param name="distance">R [m]; finite, &gt; 0.</param>
    public static double EirpOfField(double strength, double distance) =>
        4.0 * Math.PI * Require.Positive(distance) * distance * Require.NotNegative(strength) * strength / Constants.VacuumImpedance;

    /// <summary>Rms field strength of an EIRP at a distance in the far zone, √(η EIRP/4πR²) [V/m].</summary>
    /// <param name="eirp">[W]; finite, ≥ 0.</param>
    /// <param name="distance">R [m]; finite, &gt; 0.</param>
    public static double FieldOfEirp(double eirp, double distance) =>
        Math.Sqrt(Constants.VacuumImpedance * Require.NotNegative(eirp) / (4.0 * Math.PI * Require.Positive(distance) * distance));

    private static FrequencyBand Megahertz(double lowest, double highest) => new(lowest * 1e6, highest * 1e6);
}
