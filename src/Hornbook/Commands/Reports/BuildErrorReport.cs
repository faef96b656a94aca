using Hornbook.Commands.Printing;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Antennas.Choosing;

namespace Hornbook.Commands.Reports;

/// <summary>What it costs when a horn is not made exactly.</summary>
internal sealed record BuildErrorReport
{
    // The same horn gives the same numbers each time; which trials are drawn does not matter.
    private const int Seed = 1;

    /// <summary>Each dimension in error by this much, and all of them together.</summary>
    public required double ToleranceM { get; init; }

    /// <summary>One dimension at a time.</summary>
    public required IReadOnlyList<DimensionErrorReport> Each { get; init; }

    /// <summary>How many horns were tried for the numbers below, each with errors of its own evenly spread within the tolerance.</summary>
    public required int TrialsCount { get; init; }

    /// <summary>95 % of the horns have more.</summary>
    public required double LowestGainDbi { get; init; }

    /// <summary>95 % of the horns have less, taken at both ends together.</summary>
    public required double HighestGainDbi { get; init; }

    public required double? LowestHalfPowerWidthEDeg { get; init; }

    public required double? HighestHalfPowerWidthEDeg { get; init; }

    public required double? LowestHalfPowerWidthHDeg { get; init; }

    public required double? HighestHalfPowerWidthHDeg { get; init; }

    internal static BuildErrorReport Of(Horn horn, double frequency, double tolerance)
    {
        BuildTolerance within = new(tolerance);
        HornFigures drawn = HornFigures.Of(horn, frequency);
        BuildSpread spread = BuildSpread.Of(horn, frequency, within, ErrorLaw.Uniform, new Random(Seed));
        return new BuildErrorReport
        {
            ToleranceM = tolerance,
            Each = [.. BuildError.Each(horn, frequency, within).Select(error => DimensionErrorReport.Of(error, drawn))],
            TrialsCount = spread.Trials,
            LowestGainDbi = Decibels.FromRatio(spread.Gain.Lower),
            HighestGainDbi = Decibels.FromRatio(spread.Gain.Upper),
            LowestHalfPowerWidthEDeg = Degrees(spread.HalfPowerWidthE?.Lower),
            HighestHalfPowerWidthEDeg = Degrees(spread.HalfPowerWidthE?.Upper),
            LowestHalfPowerWidthHDeg = Degrees(spread.HalfPowerWidthH?.Lower),
            HighestHalfPowerWidthHDeg = Degrees(spread.HalfPowerWidthH?.Upper),
        };
    }

    internal void Describe(TextPage page)
    {
        page.Heading($"What ±{Show.Length(ToleranceM)} costs");
        TextTable table = new("dimension", ">gain [dB]", ">E width [deg]", ">H width [deg]");
        foreach (DimensionErrorReport error in Each)
        {
            error.AddTo(table);
        }

        page.Table(table);
        page.Paragraph("The first number of each pair is for a dimension too small, the second for one too large.");
        page.Paragraph(
            $"All errors together, {TrialsCount} horns tried: 95 of 100 have {Show.Fixed(LowestGainDbi, 2)} to {Show.FineDb(HighestGainDbi, "dBi")}"
            + Range(", E width ", LowestHalfPowerWidthEDeg, HighestHalfPowerWidthEDeg) + Range(", H width ", LowestHalfPowerWidthHDeg, HighestHalfPowerWidthHDeg) + ".");
    }

    private static string Range(string what, double? lowest, double? highest) =>
        lowest is { } low && highest is { } high ? $"{what}{Show.Fixed(low, 1)} to {Show.Fixed(high, 1, "deg")}" : string.Empty;

    private static double? Degrees(double? angle) => angle * 180.0 / Math.PI;
}
