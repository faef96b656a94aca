using Hornbook.Drawing.Figures;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Antennas.Choosing;

namespace Hornbook.Tabletop.Design;

/// <summary>An antenna to be looked at.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Shape">Its dimensions.</param>
/// <param name="Frequency">f [Hz].</param>
/// <param name="Tolerance">How far each dimension may be off when it is built [m].</param>
public sealed record AntennaQuestion(string Name, AntennaShape Shape, double Frequency, double Tolerance);

/// <summary>What an antenna does and what a build error costs, with its pattern drawn.</summary>
public sealed record AntennaStudy
{
    // The same horn gives the same numbers each time; which trials are drawn does not matter.
    private const int Seed = 1;

    /// <summary>Where the gain close by is told, in far distances 2D²/λ [-].</summary>
    private static readonly double[] NearShares = [0.25, 0.5, 1.0];

    public required AntennaQuestion Question { get; init; }

    public required Antenna Antenna { get; init; }

    /// <summary>E plane, H plane and between them.</summary>
    public required IReadOnlyList<BeamShape> Beams { get; init; }

    /// <summary>Strongest crossed field between the planes, over the axis [-].</summary>
    public required double Crossed { get; init; }

    /// <summary>Distances [m] and the gain found there on the axis [-].</summary>
    public required IReadOnlyList<(double Distance, double Gain)> Near { get; init; }

    /// <summary>The horn as drawn; null for an open guide, which is not built.</summary>
    public required HornFigures? Drawn { get; init; }

    public required IReadOnlyList<BuildError> Errors { get; init; }

    /// <summary>All errors together; null for an open guide.</summary>
    public required BuildSpread? Spread { get; init; }

    public required FigurePicture Pattern { get; init; }

    public static AntennaStudy Of(AntennaQuestion question, IProgress<double> progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(progress);
        Antenna antenna = Antenna.At(question.Shape, question.Frequency);
        BeamShape[] beams = [.. Enum.GetValues<PatternPlane>().Select(plane => BeamShape.Of(antenna, plane))];
        progress.Report(0.2);
        FigurePicture pattern = FigurePicture.Of(PatternFigure.Of(question.Name, antenna));
        cancellation.ThrowIfCancellationRequested();
        progress.Report(0.5);
        Horn? horn = question.Shape as Horn;
        BuildTolerance within = new(question.Tolerance);
        return new AntennaStudy
        {
            Question = question,
            Antenna = antenna,
            Beams = beams,
            Crossed = CrossedField.Strongest(antenna, PatternPlane.Diagonal),
            Near = [.. NearShares.Select(share => (share * antenna.FarDistance, NearZoneGain.OnAxis(antenna, share * antenna.FarDistance)))],
            Drawn = horn is null ? null : HornFigures.Of(horn, question.Frequency),
            Errors = horn is null ? [] : BuildError.Each(horn, question.Frequency, within),
            Spread = horn is null ? null : BuildSpread.Of(horn, question.Frequency, within, ErrorLaw.Uniform, new Random(Seed)),
            Pattern = pattern,
        };
    }
}
