using Hornbook.Commands.Printing;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;

namespace Hornbook.Commands.Reports;

/// <summary>What a guide carries.</summary>
internal sealed record GuideReport : IReport
{
    private const int ModesShown = 5;

    /// <summary>EIA name; null where it is no standard size.</summary>
    public required string? Name { get; init; }

    public required string? IecName { get; init; }

    public required double WidthM { get; init; }

    public required double HeightM { get; init; }

    public required double CutoffHz { get; init; }

    public required double LowestRecommendedHz { get; init; }

    public required double HighestRecommendedHz { get; init; }

    /// <summary>In the order in which they begin to travel.</summary>
    public required IReadOnlyList<ModeReport> Modes { get; init; }

    /// <summary>TE10 at the frequency asked for; null where none was.</summary>
    public required GuideWaveReport? Wave { get; init; }

    internal static GuideReport Of(RectangularGuide guide, double? frequency, Conductor walls)
    {
        StandardGuide? standard = StandardGuides.Matching(guide);
        FrequencyBand band = StandardGuides.RecommendedBand(guide);
        return new GuideReport
        {
            Name = standard?.Name,
            IecName = standard?.IecName,
            WidthM = guide.Width,
            HeightM = guide.Height,
            CutoffHz = guide.CutoffFrequency,
            LowestRecommendedHz = band.Lowest,
            HighestRecommendedHz = band.Highest,
            Modes = [.. GuideModes.First(guide, ModesShown).Select(m => new ModeReport(m.Name, m.CutoffFrequency))],
            Wave = frequency is { } f ? GuideWaveReport.Of(GuideWave.At(guide, f), walls) : null,
        };
    }

    /// <inheritdoc/>
    public void Describe(TextPage page)
    {
        string size = $"{Show.Fixed(WidthM * 1e3, 2)} x {Show.Fixed(HeightM * 1e3, 2, "mm")} inside";
        page.Heading(Name is null ? $"Guide of {size}" : $"{Name} ({IecName}), {size}");
        page.Gap();
        TextTable table = new(string.Empty, ">", string.Empty);
        table.Row("Cut-off", Show.Fixed(CutoffHz / 1e9, 3, "GHz"), "nothing travels below");
        table.Row("Meant for", $"{Show.Fixed(LowestRecommendedHz / 1e9, 2)} to {Show.Fixed(HighestRecommendedHz / 1e9, 2, "GHz")}", string.Empty);
        table.Row("More modes", Show.Fixed(Modes[1].CutoffHz / 1e9, 3, "GHz"), $"and above: {string.Join(", ", Modes.Skip(1).Select(m => m.Mode))}");
        page.Table(table);
        Wave?.Describe(page);
    }
}
