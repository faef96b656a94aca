using Hornbook.Bench.Files;
using Hornbook.Commands.Printing;
using Hornbook.Physics.Antennas.Choosing;

namespace Hornbook.Commands.Reports;

/// <summary>The horn for a wish, or why there is none.</summary>
internal sealed record ChoiceReport : IReport
{
    public required string Wish { get; init; }

    /// <summary>Why there is no horn; null where there is one.</summary>
    public required RefusalReport? Refusal { get; init; }

    /// <summary>The horn; null where there is none.</summary>
    public required AntennaReport? Antenna { get; init; }

    /// <summary>The same horn in whole steps of what a workshop can hold, and what it then does; null where there is none.</summary>
    public required TradeReport? Cut { get; init; }

    /// <summary>That horn as the table of a bench file; null where there is none.</summary>
    public required string? BenchText { get; init; }

    /// <summary>How the horn is cut from the sheet, before rounding; null where no sheet was given.</summary>
    public required SheetReport? Sheet { get; init; }

    /// <summary>What other lengths would give; empty where there is no horn.</summary>
    public required IReadOnlyList<TradeReport> Trade { get; init; }

    internal static ChoiceReport Of(string wish, HornChoice choice, HornFigures? cut, double tolerance, IReadOnlyList<HornFigures> trade) => new()
    {
        Wish = wish,
        Refusal = choice.Refusal is { } refusal ? RefusalReport.Of(refusal) : null,
        Antenna = choice.Figures is { } figures
            ? AntennaReport.Of("chosen horn", Physics.Antennas.Antenna.At(figures.Horn, figures.Frequency), tolerance)
            : null,
        Cut = cut is null ? null : TradeReport.Of(cut),
        BenchText = cut is null ? null : string.Join('\n', AntennaText.Lines("chosen-horn", cut.Horn)),
        Sheet = choice.Layout is { } layout ? SheetReport.Of(layout) : null,
        Trade = [.. trade.Select(TradeReport.Of)],
    };

    /// <inheritdoc/>
    public void Describe(TextPage page)
    {
        page.Heading($"Wished: {Wish}");
        if (Refusal is not null)
        {
            page.Paragraph(Refusal.Sentence);
            return;
        }

        page.Gap();
        Antenna!.Describe(page);
        if (Sheet is not null)
        {
            DescribeSheet(page, Sheet);
        }

        DescribeHorns(page, "What other lengths give", Trade);
        DescribeHorns(page, "In whole steps, as a workshop holds them", [Cut!]);
        page.Heading("For a bench file");
        foreach (string line in BenchText!.Split('\n'))
        {
            page.Paragraph(line);
        }
    }

    private static void DescribeHorns(TextPage page, string heading, IReadOnlyList<TradeReport> horns)
    {
        page.Heading(heading);
        TextTable table = new(">length", ">mouth (wide x high)", ">gain", ">E width", ">H width");
        foreach (TradeReport row in horns)
        {
            table.Row(
                Show.Millimetres(row.LengthM), $"{Show.Fixed(row.MouthWidthM * 1e3, 1)} x {Show.Millimetres(row.MouthHeightM)}", Show.Db(row.GainDbi, "dBi"),
                Angle(row.HalfPowerWidthEDeg), Angle(row.HalfPowerWidthHDeg));
        }

        page.Table(table);
    }

    private static void DescribeSheet(TextPage page, SheetReport sheet)
    {
        page.Heading($"Cut from the sheet: {Show.Millimetres(sheet.UsedWidthM)} x {Show.Millimetres(sheet.UsedHeightM)} of it");
        TextTable table = new("panel", ">at the throat", ">at the mouth", ">slant", ">middle at", ">foot at");
        foreach (WallReport panel in sheet.Panels)
        {
            table.Row(
                panel.Turned ? "turned" : "upright", Show.Millimetres(panel.ThroatEdgeM), Show.Millimetres(panel.MouthEdgeM), Show.Millimetres(panel.SlantM),
                Show.Millimetres(panel.CentreM), Show.Millimetres(panel.BaseM));
        }

        page.Table(table);
        page.Paragraph("Upright: mouth edge below. Places are from the sheet's lower left corner.");
    }

    private static string Angle(double? degrees) => degrees is { } d ? Show.Fixed(d, 1, "deg") : "none";
}
