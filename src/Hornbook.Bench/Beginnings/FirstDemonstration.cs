using Hornbook.Bench.Demonstrations;
using Hornbook.Physics;

namespace Hornbook.Bench.Beginnings;

/// <summary>A demonstration that a first bench could show, as the lines of its table.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Why">What it is shown for; a comment above it.</param>
/// <param name="Lines">The lines below its header.</param>
internal sealed record FirstDemonstration(string Name, string Why, params IReadOnlyList<string> Lines)
{
    /// <summary>Those that may be tried, in the order of a show: of each the first that can be heard is taken.</summary>
    internal static IReadOnlyList<IReadOnlyList<FirstDemonstration>> Candidates(FirstDraft draft)
    {
        IReadOnlyList<IReadOnlyList<FirstDemonstration>> all = [[Polarisation], [Width("source"), Width("receiver")], Change(draft), Law(draft)];
        return draft.Wish.Audience == Audience.Hall ? [all[2], all[0], all[1]] : all;
    }

    private static FirstDemonstration Polarisation => new(
        "polarisation", "The receiver is rolled: across the field it hears nothing, though the wave is there.",
        "kind = \"polarisation\"", "from = \"0 deg\"", "to = \"90 deg\"", "points = 91");

    private static FirstDemonstration Width(string end) => new(
        "beam-width", $"The {end} is turned on the spot: how wide its beam is.",
        "kind = \"beam width\"", $"end = \"{end}\"", "from = \"-60 deg\"", "to = \"60 deg\"", "points = 121");

    private static IReadOnlyList<FirstDemonstration> Change(FirstDraft draft) => draft.Antennas.All.Count < 2 ? [] :
    [
        new("gain", "One antenna after the other at the source: what the size of a mouth does.",
            "kind = \"antenna change\"", "end = \"source\"", $"antennas = [{string.Join(", ", draft.Antennas.All.Select(antenna => $"\"{antenna.Name}\""))}]"),
    ];

    private static IReadOnlyList<FirstDemonstration> Law(FirstDraft draft)
    {
        double farZone = draft.Antennas.FarZone(FreeSpace.Wavelength(draft.Wish.Frequency));
        double from = Math.Ceiling(100.0 * Math.Max(farZone, 0.3 * draft.Antennas.Distance)) / 100.0;
        return from > 0.7 * draft.Antennas.Distance ? [] :
        [
            new("distance-law", "The receiver goes away: twice as far is a quarter of the power.",
                "kind = \"distance\"", $"from = \"{InWords.Length(from)}\"", $"to = \"{InWords.Length(draft.Antennas.Distance)}\"", "points = 61"),
        ];
    }
}
