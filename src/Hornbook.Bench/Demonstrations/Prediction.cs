using Hornbook.Bench.Readings;

namespace Hornbook.Bench.Demonstrations;

/// <summary>Everything that is predicted of a demonstration.</summary>
/// <param name="Demonstration">What is moved or changed.</param>
/// <param name="Curve">The readings.</param>
/// <param name="Evaluation">What they are worth beside the antennas' own numbers and the books'.</param>
/// <param name="Heard">What the audience will hear, one sentence with numbers.</param>
/// <param name="Limits">What limits it on this bench; empty where nothing does.</param>
public sealed record Prediction(
    Demonstration Demonstration, Curve Curve, Evaluation Evaluation, string Heard, IReadOnlyList<Limit> Limits)
{
    /// <summary>Predicts a demonstration.</summary>
    /// <inheritdoc cref="Curve.Of" path="/param|/exception"/>
    public static Prediction Of(
        Scene scene, Demonstration demonstration, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(demonstration);
        Curve curve = Curve.Of(scene, demonstration, progress, cancellation);
        Evaluation evaluation = demonstration.Evaluate(scene, curve);
        return new Prediction(demonstration, curve, evaluation, demonstration.Heard(scene, curve, evaluation), CurveLimits.Of(scene, curve));
    }

    /// <summary>Predicts several demonstrations side by side.</summary>
    /// <param name="wanted">Each on its bench.</param>
    /// <param name="done">Told how many are done.</param>
    /// <param name="cancellation">Stops the computing.</param>
    /// <returns>The predictions in that order.</returns>
    internal static Prediction[] All(IReadOnlyList<(Scene Scene, Demonstration Demonstration)> wanted, Action<int>? done, CancellationToken cancellation)
    {
        int count = 0;
        return SideBySide.Each(wanted, one =>
        {
            Prediction prediction = Of(one.Scene, one.Demonstration, null, cancellation);
            done?.Invoke(Interlocked.Increment(ref count));
            return prediction;
        }, cancellation);
    }
}
