using Hornbook.Physics;
using Hornbook.Physics.Antennas.Choosing;

namespace Hornbook.Commands.Reports;

/// <summary>The best that a length gives.</summary>
internal sealed record TradeReport(
    double LengthM, double MouthWidthM, double MouthHeightM, double GainDbi, double? HalfPowerWidthEDeg, double? HalfPowerWidthHDeg)
{
    internal static TradeReport Of(HornFigures figures) => new(
        figures.Horn.Length,
        figures.Horn.MouthWidth,
        figures.Horn.MouthHeight,
        Decibels.FromRatio(figures.Gain),
        figures.HalfPowerWidthE * 180.0 / Math.PI,
        figures.HalfPowerWidthH * 180.0 / Math.PI);
}
