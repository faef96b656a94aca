using System.Text.Json.Serialization;
using Hornbook.Bench.Demonstrations;
using Hornbook.Commands.Printing;

namespace Hornbook.Commands.Reports;

/// <summary>What a curve is worth beside the antennas' own numbers and the books'.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "shows")]
[JsonDerivedType(typeof(BeamWidthReport), "beam_width")]
[JsonDerivedType(typeof(AntennaChangeReport), "gain")]
[JsonDerivedType(typeof(DistanceReport), "distance_law")]
[JsonDerivedType(typeof(PolarisationReport), "polarisation")]
[JsonDerivedType(typeof(LawReport), "law")]
internal abstract record EvaluationReport
{
    internal static EvaluationReport Of(Evaluation evaluation) => evaluation switch
    {
        BeamWidthEvaluation e => BeamWidthReport.Of(e),
        AntennaChangeEvaluation e => AntennaChangeReport.Of(e),
        DistanceEvaluation e => DistanceReport.Of(e),
        PolarisationEvaluation e => PolarisationReport.Of(e),
        LawEvaluation e => LawReport.Of(e),
        _ => throw new ArgumentException($"no report is known for {evaluation?.GetType().Name ?? "nothing"}", nameof(evaluation)),
    };

    /// <summary>Says it in words.</summary>
    internal abstract void Describe(TextPage page);

    private protected static double? Degrees(double? angle) => angle * 180.0 / Math.PI;
}
