using Hornbook.Drawing.Figures;
using Hornbook.Physics.Panels.Choosing;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Tabletop.Design;

/// <summary>A sheet to be looked at, in its own frame.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Sheet">What it is made of.</param>
/// <param name="Frequency">f [Hz].</param>
/// <param name="Tolerance">How far strips and periods may be off when it is built [m].</param>
public sealed record SheetQuestion(string Name, ISheet Sheet, double Frequency, double Tolerance);

/// <summary>What a sheet does to waves from several directions, drawn and in numbers; of a grid also what turning and build errors do.</summary>
public sealed record SheetStudy
{
    private const double Degree = Math.PI / 180.0;

    private static readonly double[] Angles = [0.0, 30.0, 45.0, 60.0];

    public required SheetQuestion Question { get; init; }

    /// <summary>Tilted across the strips of a grid, or in any plane.</summary>
    public required IReadOnlyList<SheetAngle> Tilted { get; init; }

    /// <summary>Tilted along the strips of a grid; empty for others.</summary>
    public required IReadOnlyList<SheetAngle> TiltedAlong { get; init; }

    /// <summary>A grid as drawn; null for others.</summary>
    public required GridFigures? Grid { get; init; }

    /// <summary>What each dimension in error does to a grid; empty for others.</summary>
    public required IReadOnlyList<GridError> Errors { get; init; }

    /// <summary>Up to here one wave leaves [rad].</summary>
    public required double OneWaveUpTo { get; init; }

    public required IReadOnlyList<FigurePicture> Pictures { get; init; }

    public static SheetStudy Of(SheetQuestion question, IProgress<double> progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(progress);
        (ISheet sheet, double frequency) = (question.Sheet, question.Frequency);
        SheetAngle[] At(bool alongStrips) => [.. Angles.Select(angle => SheetAngle.Of(sheet, frequency, angle * Degree, alongStrips))];
        SheetAngle[] tilted = At(alongStrips: false);
        progress.Report(0.4);
        cancellation.ThrowIfCancellationRequested();
        GridFigures? grid = Figures(sheet, frequency);
        FigurePicture angles = FigurePicture.Of(PanelFigure.Of($"{question.Name}: against the angle", sheet, frequency));
        progress.Report(0.7);
        cancellation.ThrowIfCancellationRequested();
        return new SheetStudy
        {
            Question = question,
            Tilted = tilted,
            TiltedAlong = grid is null ? [] : At(alongStrips: true),
            Grid = grid,
            Errors = grid is null ? [] : GridError.Each(grid, Math.Min(question.Tolerance, 0.5 * Math.Min(grid.Metal, grid.Gap))),
            OneWaveUpTo = sheet.OneWaveUpTo(frequency),
            Pictures = grid is null ? [angles] : [angles, FigurePicture.Of(GridTurnFigure.Of($"{question.Name}: metal turned against the field", sheet, frequency))],
        };
    }

    private static GridFigures? Figures(ISheet sheet, double frequency) => sheet switch
    {
        StripGrid strips => GridFigures.Of(new StripMake(), strips.Period, strips.StripWidth, frequency),
        BoardedStripGrid boarded => GridFigures.Of(new StripMake(boarded.Board), boarded.Strips.Period, boarded.Strips.StripWidth, frequency),
        WireGrid wires => GridFigures.Of(new WireMake(), wires.Period, wires.Diameter, frequency),
        _ => null,
    };
}
