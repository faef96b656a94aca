using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;

namespace Hornbook.Bench.Findings;

/// <summary>A bench that can be computed, with everything that the checks look at computed once.</summary>
/// <param name="Scene">The bench made ready.</param>
/// <param name="Reading">Its reading as it stands.</param>
/// <param name="Textbook">The textbook formulas beside that.</param>
/// <param name="Predictions">Of each demonstration that can be computed.</param>
/// <param name="Cancellation">Stops the looking for mends too.</param>
internal sealed record Inspection(
    Scene Scene, Reading Reading, TextbookComparison Textbook, IReadOnlyList<Prediction> Predictions, CancellationToken Cancellation)
{
    internal BenchPlan Plan => Scene.Plan;

    internal SourceEnd Source => Plan.Source;

    internal ReceiverEnd Receiver => Plan.Receiver;

    internal double Wavelength => Physics.FreeSpace.Wavelength(Plan.Frequency);

    internal double Distance => Textbook.Distance;

    internal static Inspection Of(Scene scene, IProgress<double>? progress, CancellationToken cancellation)
    {
        IReadOnlyList<Demonstration> shown = scene.Plan.Demonstrations;
        Prediction[] predictions = Prediction.All([.. shown.Select(one => (scene, one))], done => progress?.Report((double)done / shown.Count), cancellation);
        return new Inspection(scene, scene.Read(), TextbookLink.AsItStands(scene), predictions, cancellation);
    }

    /// <summary>What another demonstration would show, or one of these on another bench.</summary>
    internal Prediction Predict(Demonstration demonstration, BenchPlan? plan = null) =>
        Prediction.Of(plan is null ? Scene : Scene.With(plan), demonstration, null, Cancellation);
}
