using System.Globalization;
using System.Text.RegularExpressions;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Findings;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Detection;
using Hornbook.Tabletop.Hands;
using Hornbook.Tabletop.Keeping;

namespace Hornbook.Tabletop;

/// <summary>Sentences of the page that depend on what is read.</summary>
public static partial class Words
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
        TrustLevel.Good => "Reliable",
        TrustLevel.Rough => "Rough",
        _ => "Only a guide",
    };

    public static string Weight(Severity severity) => severity switch
    {
        Severity.Spoils => "Spoils the show",
        Severity.Weakens => "Weakens it",
        _ => "Good to know",
    };

    /// <summary>How many findings stand in the way of the show: "2 things spoil the show, 1 weakens it"; null where none does.</summary>
    public static string? Count(IEnumerable<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        int[] counts = [.. new[] { Severity.Spoils, Severity.Weakens }.Select(severity => findings.Count(finding => finding.Severity == severity))];
        return counts switch
        {
            [0, 0] => null,
            [0, int weakens] => $"{Things(weakens, "weakens", "weaken")} the show",
            [int spoils, 0] => $"{Things(spoils, "spoils", "spoil")} the show",
            [int spoils, int weakens] => $"{Things(spoils, "spoils", "spoil")} the show, {weakens} {(weakens == 1 ? "weakens" : "weaken")} it",
            _ => throw new System.Diagnostics.UnreachableException(),
        };

        static string Things(int count, string one, string many) => count == 1 ? $"1 thing {one}" : $"{count} things {many}";
    }

    /// <summary>How far to stay away, and by whose limit.</summary>
    public static string KeepOut(BenchSession session)
    {
        ArgumentNullException.ThrowIfNull(session);
        return (session.Advice.Limit, session.Advice.KeepOut) switch
        {
            (null, _) => "No limit is known here for this frequency: find the local one.",
            (_, null) => "Computing the keep-out distance …",
            ({ } limit, { } shape) =>
                $"Keep people {Shown.Clearance(shape.OnAxis, session.Preferences.Unit)} away in front of the source: there its most, {Shown.Power(session.Plan.Source.WorstCasePower)}, "
                + $"falls to {Shown.Density(limit.PowerDensity(session.Plan.Frequency))}, {limit.Title} ({limit.Instrument}).",
        };
    }

    /// <summary>What is done to a thing, as undo names it.</summary>
    public static string Moving(BenchThing thing, Pose from, Pose to)
    {
        string how = (from.Position != to.Position, from.Turn != to.Turn, from.Tilt != to.Tilt) switch
        {
            (true, _, _) => "moving",
            (_, true, _) => "turning",
            (_, _, true) => "tilting",
            _ => "rolling",
        };
        return $"{how} {thing.Name}";
    }

    /// <summary>A sentence as the name of a step: "Raise the axis to 60 cm." becomes "‘raise the axis to 60 cm’".</summary>
    public static string Naming(string sentence)
    {
        ArgumentException.ThrowIfNullOrEmpty(sentence);
        return $"‘{char.ToLowerInvariant(sentence[0])}{sentence[1..].TrimEnd('.')}’";
    }

    /// <summary>A sentence whose numbers keep their units on one line: on a wall "40" and "cm" are read apart otherwise.</summary>
    public static string Bound(string sentence) => Breakable().Replace(sentence, "\u00a0");

    /// <summary>A file as the page names it: its own name, with that of its folder where it is a copy of an example.</summary>
    public static string File(string path)
    {
        string folder = Path.GetFileName(Path.GetDirectoryName(path)) ?? string.Empty;
        return folder == BenchHome.CopiesFolder ? $"{folder}/{Path.GetFileName(path)}" : Path.GetFileName(path);
    }

    /// <summary>How many just-noticeable steps of pitch a move has made.</summary>
    public static string Moved(Reading? before, Reading now)
    {
        ArgumentNullException.ThrowIfNull(now);
        if (before is null)
        {
            return "Nothing moved yet.";
        }

        double steps = PitchSteps.Between(Heard(before), Heard(now));
        string count = steps.ToString(steps < 9.5 ? "0.#" : "0", CultureInfo.InvariantCulture);
        return count == "0"
            ? "Last move: no difference that is heard."
            : $"Last move: {count} {(count == "1" ? "step" : "steps")} {(now.Heard.Tone > before.Heard.Tone ? "up ▲" : "down ▼")}";
    }

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

    // Beyond 20 kHz nobody hears a step.
    private static double Heard(Reading reading) => Math.Min(reading.Heard.Tone, 20e3);

    [GeneratedRegex(@"(?<=\d) (?=(?:[kMG]?Hz|[cm]?m|dB|[mµ]?[WV])\b)| (?==)|(?<==) ")]
    private static partial Regex Breakable();

    private static string Sided(double angle, string positive, string negative, string none) =>
        Math.Abs(angle) < 1e-3 ? none : $"{Shown.Angle(Math.Abs(angle))} {(angle > 0.0 ? positive : negative)}";
}
