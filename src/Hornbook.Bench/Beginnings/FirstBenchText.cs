using System.Globalization;
using System.Text;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Beginnings;

/// <summary>A first bench as the text of its file, with comments that say what each number is and what to measure.</summary>
internal static class FirstBenchText
{
    internal static string Of(FirstDraft draft) => string.Join('\n',
    [
        .. Head(draft), .. draft.Antennas.All.SelectMany(Antenna), .. Ends(draft), .. Detection(draft),
        .. draft.Shown.Count > 0 ? Rule("what is shown") : [], .. draft.Shown.SelectMany(Demonstration),
    ]).TrimEnd('\n') + "\n";

    private static IEnumerable<string> Head(FirstDraft draft) =>
    [
        "# Made from five answers. Every number here is yours to change; what is not said below is explained in",
        "# docs/bench-file.md, and \"hornbook check\" says what would spoil the show.",
        string.Empty,
        "format = 1",
        $"title = {Quoted(draft.Title)}",
        $"frequency = \"{Written(draft.Wish.Frequency, Quantity.Frequency, "GHz")}\"",
        string.Empty,
        "[table]",
        $"length = \"{Length(draft.Wish.TableLength)}\"",
        $"width = \"{Length(draft.Wish.TableWidth)}\"",
        "# With these two lines the waves that the table top throws back are part of every number:",
        "# material = \"plywood\"",
        "# thickness = \"20 mm\"",
        .. Rule("antennas at hand"),
        string.Empty,
    ];

    private static IEnumerable<string> Antenna((string Name, Physics.Antennas.AntennaShape Shape, string Said) antenna) =>
        [$"# {antenna.Said}", .. AntennaText.Lines(antenna.Name, antenna.Shape), string.Empty];

    private static IEnumerable<string> Ends(FirstDraft draft) =>
    [
        Line("the two ends"),
        string.Empty,
        .. KeepOut(draft),
        "[source]",
        $"antenna = \"{draft.Antennas.Source}\"",
        $"power = \"{Power(draft)}\"             # as answered; write here what you measure",
        $"worst_case_power = \"{Power(draft)}\"  # the most that its data sheet allows; distances to keep are computed with it",
        .. Place(draft.Antennas.SourceAt, draft.Height),
        "turn = \"0 deg\"",
        "tilt = \"0 deg\"",
        "roll = \"0 deg\"  # electric field upright",
        string.Empty,
        "[receiver]",
        $"antenna = \"{draft.Antennas.Receiver}\"",
        .. Place(draft.Antennas.ReceiverAt, draft.Height),
        "turn = \"180 deg\"  # looks back at the source",
        "tilt = \"0 deg\"",
        "roll = \"0 deg\"",
    ];

    private static IEnumerable<string> KeepOut(FirstDraft draft) => draft.KeepOut switch
    {
        null => ["# No exposure limit is known here for this frequency: look up the one that holds where you show it."],
        < 0.01 => ["# Nowhere more than a centimetre from its mouth does it give more than the strictest limit for the public. Never look into it all the same."],
        double distance => [$"# On its axis people stay {InWords.Length(Math.Ceiling(distance * 100.0) / 100.0)} away (the strictest limit for the public, at the most it can give).", "# Whoever moves the receiver reaches in from behind it. Never look into a live horn or guide."],
    };

    private static IEnumerable<string> Place(double along, double height) =>
        [$"x = \"{Length(along)}\"", "y = \"0 cm\"", $"z = \"{Length(height)}\"  # of the axis; high enough that the table's echo stays weak"];

    private static IEnumerable<string> Detection(FirstDraft draft)
    {
        (int atZero, int slope, string why) = Voice(draft.Wish.Audience);
        return
        [
            .. Rule("from wave to tone"),
            string.Empty,
            "[detector]",
            "law = \"junction\"               # square for weak waves, bends over for strong ones",
            "sensitivity = \"0.5 mV/µW\"      # usual for a crystal; calibrate yours against a power meter",
            "video_resistance = \"8 kohm\"",
            string.Empty,
            "[amplifier]",
            string.Create(CultureInfo.InvariantCulture, $"gain = {draft.Gain:0.#######}  # the strongest wave of all that is shown then fills nine tenths of the range"),
            "offset = \"0 mV\"",
            "lowest = \"0 V\"",
            "highest = \"8 V\"",
            "noise = \"12 nV/√Hz\"",
            string.Create(CultureInfo.InvariantCulture, $"bandwidth = \"{draft.Bandwidth:0.###} Hz\"  # the slower, the steadier the tone"),
            string.Empty,
            $"[tone]  # {why}",
            "law = \"linear\"",
            $"at_zero = \"{atZero} Hz\"",
            $"slope = \"{slope} Hz/V\"",
            "lowest = \"60 Hz\"",
            "highest = \"3 kHz\"",
            string.Empty,
            "[exposure]",
            "limit = \"strictest\"",
        ];
    }

    private static (int AtZero, int Slope, string Why) Voice(Audience audience) => audience switch
    {
        Audience.AroundTheTable => (220, 160, "from A3 upwards: a small loudspeaker gives nothing lower"),
        Audience.Class => (110, 180, "from A2 upwards: four octaves for a loudspeaker of some size"),
        _ => (110, 240, "from A2 upwards and wide, so that the last row hears each step"),
    };

    private static IEnumerable<string> Demonstration(FirstDemonstration shown) =>
        [string.Empty, $"# {shown.Why}", "[[demonstrations]]", $"name = \"{shown.Name}\"", .. shown.Lines];

    private static IEnumerable<string> Rule(string what) => [string.Empty, Line(what)];

    private static string Line(string what) => $"# ---------------------------------------------------------------- {what}";

    private static string Power(FirstDraft draft) => Written(draft.Wish.Power, Quantity.Power, draft.Wish.Power < 1e-3 ? "µW" : "mW");

    private static string Length(double length) => Written(length, Quantity.Length, length < 1.0 ? "cm" : "m");

    private static string Written(double value, Quantity quantity, string unit) => QuantityText.Write(value, quantity.FindUnit(unit)!, quantity);

    // A TOML basic string: quotes, backslashes and control characters are written as escapes.
    private static string Quoted(string text)
    {
        StringBuilder quoted = new("\"");
        foreach (char letter in text)
        {
            quoted.Append(letter is '"' or '\\' || char.IsControl(letter) ? string.Create(CultureInfo.InvariantCulture, $"\\u{(int)letter:X4}") : letter.ToString());
        }

        return quoted.Append('"').ToString();
    }
}
