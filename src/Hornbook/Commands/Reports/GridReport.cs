using Hornbook.Commands.Printing;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Commands.Reports;

/// <summary>What a grid of metal strips or wires stops and lets through.</summary>
internal sealed record GridReport : IReport
{
    private const double Degree = Math.PI / 180.0;

    private static readonly double[] Angles = [0.0, 15.0, 30.0, 45.0, 60.0];

    public required double FrequencyHz { get; init; }

    public required double PeriodM { get; init; }

    /// <summary>Null for wires.</summary>
    public double? StripWidthM { get; init; }

    /// <summary>Null for strips.</summary>
    public double? WireDiameterM { get; init; }

    /// <summary>What the strips are on; null in air.</summary>
    public PanelLayerReport? Board { get; init; }

    /// <summary>At right angles: the field along the strips over the field across them, both after the grid.</summary>
    public required double ExtinctionDb { get; init; }

    /// <summary>Up to this angle no second beam leaves.</summary>
    public required double OneWaveUpToDeg { get; init; }

    public required IReadOnlyList<GridAngleReport> Angular { get; init; }

    internal static GridReport Of(StripGrid grid, double frequency) =>
        Of(grid, grid.Period, frequency) with { StripWidthM = grid.StripWidth };

    internal static GridReport Of(BoardedStripGrid grid, double frequency) => Of(grid, grid.Strips.Period, frequency) with
    {
        StripWidthM = grid.Strips.StripWidth,
        Board = PanelLayerReport.Of(grid.Board.Layers[0], frequency),
    };

    internal static GridReport Of(WireGrid grid, double frequency) =>
        Of(grid, grid.Period, frequency) with { WireDiameterM = grid.Diameter };

    /// <inheritdoc/>
    public void Describe(TextPage page)
    {
        string metal = WireDiameterM is { } diameter ? $"Wires of {Show.Millimetres(diameter)}" : $"Strips of {Show.Millimetres(StripWidthM!.Value)}";
        string board = Board is null ? string.Empty : $" on {Show.Millimetres(Board.ThicknessM)} of {Board.Material}";
        page.Heading($"{metal}, one each {Show.Millimetres(PeriodM)}{board}, at {Show.Gigahertz(FrequencyHz)}");
        page.Paragraph($"Field along the {Things}: {Show.Db(Angular[0].PassedDb)} passes. Across them: {Show.FineDb(Angular[1].PassedDb, "dB")}.");
        page.Gap();
        page.Table(Table());
        page.Paragraph($"{Idealised} The angle is that between wave and normal; tilt and field are told by the {Things}, across or along them.");
        if (Board is { IsKnownHere: false })
        {
            page.Paragraph($"{Board.Material} is not known at this frequency: its values are a guess.");
        }

        if (Angular.Any(row => row.IsScattered))
        {
            page.Paragraph("Where a second beam leaves the grid, power goes astray: make the period smaller.");
        }
    }

    private string Things => WireDiameterM is null ? "strips" : "wires";

    private string Idealised => (Board, WireDiameterM) switch
    {
        (null, null) => "Thin, endless strips in air, without a board.",
        (null, _) => "Endless, perfectly conducting wires in air.",
        _ => "Thin, endless strips on a board, which passes the same from either side.",
    };

    private static GridReport Of(ISheet grid, double period, double frequency)
    {
        ISheetResponse response = grid.At(frequency);
        GridAngleReport[] rows =
        [
            .. from angle in Angles
               from row in GridAngleReport.Of(grid, response, frequency, angle * Degree, alongStrips: false)
                   .Concat(GridAngleReport.Of(grid, response, frequency, angle * Degree, alongStrips: true))
               select row
        ];
        return new GridReport
        {
            FrequencyHz = frequency,
            PeriodM = period,
            ExtinctionDb = rows[0].PassedDb - rows[1].PassedDb,
            OneWaveUpToDeg = grid.OneWaveUpTo(frequency) / Degree,
            Angular = rows,
        };
    }

    private TextTable Table()
    {
        TextTable table = Board is null
            ? new(">angle", "tilted", "electric field", ">passes", ">thrown back", string.Empty)
            : new(">angle", "tilted", "electric field", ">passes", ">off strips", ">off board", string.Empty);
        foreach (GridAngleReport row in Angular.Where(row => row.AngleDeg > 0.0 || row.TiltedTowards == "across"))
        {
            string[] levels = row.ReflectedFromBoardDb is { } offBoard
                ? [Show.FineDb(row.PassedDb, "dB"), Show.FineDb(row.ReflectedDb, "dB"), Show.FineDb(offBoard, "dB")]
                : [Show.FineDb(row.PassedDb, "dB"), Show.FineDb(row.ReflectedDb, "dB")];
            string tilted = row.AngleDeg > 0.0 ? row.TiltedTowards : string.Empty;
            table.Row([Show.Fixed(row.AngleDeg, 0, "deg"), tilted, row.ElectricField, .. levels, row.IsScattered ? "a second beam" : string.Empty]);
        }

        return table;
    }
}
