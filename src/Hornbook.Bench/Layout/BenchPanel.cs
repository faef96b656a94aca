using Hornbook.Physics;
using Hornbook.Physics.Panels;

namespace Hornbook.Bench.Layout;

/// <summary>A panel at hand.</summary>
/// <param name="Name">As in the file; unique.</param>
/// <param name="Panel">Its surface and what it is made of.</param>
/// <param name="Pose">Where its centre stands and how it is held, or would be when it is put in.</param>
/// <param name="Stands">Whether it stands on the table; else it lies aside.</param>
public sealed record BenchPanel(string Name, Panel Panel, Pose Pose, bool Stands)
{
    /// <summary>What sort of thing it is, in the words of the file: "strip grid".</summary>
    public string Kind { get; init; } = "panel";
}
