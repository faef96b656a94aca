using Hornbook.Commands.Printing;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Commands.Reports;

/// <summary>What a grid of metal strips stops and lets through.</summary>
internal sealed record GridReport : IReport
{
    private const double Degree = Math.PI / 180.0;

    private static readonly double[] Angles = [0.0, 15.0, 30.0, 45.0, 60.0];

    public required double FrequencyHz { get; init; }

    public required double PeriodM { get; init; }

    public required double StripWidthM { get; init; }

    /// <summary>At right angles: the field along the strips over the field across them, both after the grid.</summary>
    public required double ExtinctionDb { get; init; }

    public required IReadOnlyList<GridAngleReport> Angular { get; init; }

    internal static GridReport Of(StripGrid grid, double frequency)
    {
        GridAngleReport[] rows =
        [
            .. from angle in Angles
               from row in GridAngleReport.Of(grid, frequency, angle * Degree, alongStrips: false)
                   .Concat(GridAngleReport.Of(grid, frequency, angle * Degree, alongStrips: true))
               select row
        ];
        return new GridReport
        {
            FrequencyHz = frequency,
            PeriodM = grid.Period,
            StripWidthM = grid.StripWidth,
            ExtinctionDb = rows[0].PassedDb - rows[1].PassedDb,
            Angular = rows,
        };
    }

    /// <inheritdoc/>
    public void Describe(TextPage page)
    {
        page.Heading($"Strips of {Show.Millimetres(StripWidthM)}, one each {Show.Millimetres(PeriodM)}, at {Show.Gigahertz(FrequencyHz)}");
        page.Paragraph($"Field along the strips: {Show.Db(Angular[0].PassedDb)} passes. Across them: {Show.FineDb(Angular[1].PassedDb, "dB")}.");
        page.Gap();
        TextTable table = new(">angle", "tilted", "electric field", ">passes", ">thrown back", string.Empty);
        foreach (GridAngleReport row in Angular.Where(row => row.AngleDeg > 0.0 || row.TiltedTowards == "across"))
        {
            table.Row(
                Show.Fixed(row.AngleDeg, 0, "deg"), row.AngleDeg > 0.0 ? row.TiltedTowards : string.Empty, row.ElectricField,
                Show.FineDb(row.PassedDb, "dB"), Show.FineDb(row.ReflectedDb, "dB"), row.IsScattered ? "a second beam" : string.Empty);
        }

        page.Table(table);
        page.Paragraph("Thin, endless strips in air, without a board. The angle is that between wave and normal; tilt and field are told by the strips, across or along them.");
        if (Angular.Any(row => row.IsScattered))
        {
            page.Paragraph("Where a second beam leaves the grid, power goes astray: make the period smaller.");
        }
    }
}
