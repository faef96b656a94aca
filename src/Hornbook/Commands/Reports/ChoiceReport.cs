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

    /// <summary>How it is cut from the sheet; null where no sheet was given.</summary>
    public required SheetReport? Sheet { get; init; }

    /// <summary>What other lengths would give; empty where there is no horn.</summary>
    public required IReadOnlyList<TradeReport> Trade { get; init; }

    internal static ChoiceReport Of(string wish, HornChoice choice, double tolerance, IReadOnlyList<HornFigures> trade) => new()
    {
        Wish = wish,
        Refusal = choice.Refusal is { } refusal ? RefusalReport.Of(refusal) : null,
        Antenna = choice.Figures is { } figures
            ? AntennaReport.Of("chosen horn", Physics.Antennas.Antenna.At(figures.Horn, figures.Frequency), tolerance)
            : null,
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

        page.Heading("What other lengths give");
        TextTable table = new(">length", ">mouth (wide x high)", ">gain", ">E width", ">H width");
        foreach (TradeReport row in Trade)
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
        foreach (PanelReport panel in sheet.Panels)
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
