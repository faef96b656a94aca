using System.Globalization;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files.Editing;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Programmes;

namespace Hornbook.Tabletop.Rehearsing;

/// <summary>What a bench file is changed by when the show is put together.</summary>
internal static class ShowChanges
{
    /// <summary>A demonstration taken into the show, or left out.</summary>
    internal static IReadOnlyList<BenchChange> Aside(Demonstration shown, bool isAside) => [BenchChange.ToTruth($"{Table(shown)}.aside", isAside)];

    /// <summary>A demonstration given more or less time [s].</summary>
    internal static IReadOnlyList<BenchChange> Lasting(Demonstration shown, double duration) => [BenchChange.ToValue($"{Table(shown)}.duration", duration)];

    /// <summary>A demonstration moved to an earlier place (−1) or a later one (+1); nothing where there is none.</summary>
    internal static IReadOnlyList<BenchChange> Moved(BenchPlan plan, Demonstration shown, int by)
    {
        List<Demonstration> order = [.. Show.Of(plan)];
        int from = order.FindIndex(other => other.Name == shown.Name), to = from + by;
        if (from < 0 || to < 0 || to >= order.Count)
        {
            return [];
        }

        (order[from], order[to]) = (order[to], order[from]);
        return
        [
            .. order.Select((other, i) => (Other: other, Place: i + 1)).Where(item => item.Other.Showing.Place != item.Place)
                .Select(item => BenchChange.ToText($"{Table(item.Other)}.place", item.Place.ToString(CultureInfo.InvariantCulture)))
        ];
    }

    /// <summary>Everything put where a programme wants it for a demonstration, with its antennas and its gain.</summary>
    internal static IReadOnlyList<BenchChange> Standing(ProgrammeItem item)
    {
        BenchPlan bench = item.Bench;
        Setting first = item.Prediction.Curve.Points[0].Setting;
        return
        [
            BenchChange.ToText("source.antenna", first.Source.Antenna), .. BenchChange.ToPose(BenchEnd.Source, first.Source.Pose),
            BenchChange.ToText("receiver.antenna", first.Receiver.Antenna), .. BenchChange.ToPose(BenchEnd.Receiver, first.Receiver.Pose),
            BenchChange.ToValue("amplifier.gain", bench.Detection.Amplifier.Gain),
            .. first.Panels.SelectMany(panel => BenchChange.ToPose($"panels.{panel.Name}", panel.Pose).Append(BenchChange.ToTruth($"panels.{panel.Name}.aside", !panel.Stands))),
        ];
    }

    private static string Table(Demonstration shown) => $"demonstrations.{shown.Name}";
}
