using System.Globalization;
using Hornbook.Commands.Printing;
using Hornbook.Physics;
using Hornbook.Physics.Antennas.Choosing;

namespace Hornbook.Commands.Reports;

/// <summary>What an error in one dimension changes, with the dimension too small and too large.</summary>
internal sealed record DimensionErrorReport(
    HornDimension Dimension,
    double ErrorM,
    double GainIfSmallerDb,
    double GainIfLargerDb,
    double? HalfPowerWidthEIfSmallerDeg,
    double? HalfPowerWidthEIfLargerDeg,
    double? HalfPowerWidthHIfSmallerDeg,
    double? HalfPowerWidthHIfLargerDeg)
{
    internal static DimensionErrorReport Of(BuildError error, HornFigures drawn) => new(
        error.Dimension,
        error.Error,
        Decibels.FromRatio(error.Smaller.Gain / drawn.Gain),
        Decibels.FromRatio(error.Larger.Gain / drawn.Gain),
        Degrees(error.Smaller.HalfPowerWidthE - drawn.HalfPowerWidthE),
        Degrees(error.Larger.HalfPowerWidthE - drawn.HalfPowerWidthE),
        Degrees(error.Smaller.HalfPowerWidthH - drawn.HalfPowerWidthH),
        Degrees(error.Larger.HalfPowerWidthH - drawn.HalfPowerWidthH));

    internal void AddTo(TextTable table) => table.Row(
        Word(),
        Changes(GainIfSmallerDb, GainIfLargerDb),
        Changes(HalfPowerWidthEIfSmallerDeg, HalfPowerWidthEIfLargerDeg),
        Changes(HalfPowerWidthHIfSmallerDeg, HalfPowerWidthHIfLargerDeg));

    private string Word() => Dimension switch
    {
        HornDimension.MouthWidth => "mouth width",
        HornDimension.MouthHeight => "mouth height",
        HornDimension.Length => "length",
        HornDimension.GuideWidth => "guide width",
        _ => "guide height",
    };

    private static string Changes(double? ifSmaller, double? ifLarger) => ifSmaller is { } smaller && ifLarger is { } larger
        ? string.Create(CultureInfo.InvariantCulture, $"{smaller:+0.00;-0.00;0.00}, {larger:+0.00;-0.00;0.00}")
        : "none";

    private static double? Degrees(double? angle) => angle * 180.0 / Math.PI;
}
