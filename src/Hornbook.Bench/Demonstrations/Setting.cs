using Hornbook.Bench.Layout;

namespace Hornbook.Bench.Demonstrations;

/// <summary>What is set at one point of a demonstration.</summary>
/// <param name="At">The abscissa in SI units: [rad], [m], or the order of an antenna or panel [-].</param>
/// <param name="Label">The name of the antenna or panel where these are changed; else empty.</param>
/// <param name="Source">The sending end as set.</param>
/// <param name="Receiver">The receiving end as set.</param>
/// <param name="Panels">The panels as set, those that lie aside included.</param>
public sealed record Setting(double At, string Label, SourceEnd Source, ReceiverEnd Receiver, IReadOnlyList<BenchPanel> Panels)
{
    /// <summary>Mouth centre to mouth centre [m].</summary>
    public double Distance => (Receiver.Pose.Position - Source.Pose.Position).Length;
}
