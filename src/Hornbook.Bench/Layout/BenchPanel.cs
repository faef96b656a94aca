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

    /// <summary>What it is, in words: "strip grid, 15 cm × 15 cm, strips of 2.5 mm every 5 mm at 45° to its upright".</summary>
    public string What => PanelInWords.What(this);

    /// <summary>Where it is, in words: "at x = 70 cm, y = 0 mm, z = 25 cm, turned 45°", or "lies aside".</summary>
    public string Where => PanelInWords.Where(this);
}
