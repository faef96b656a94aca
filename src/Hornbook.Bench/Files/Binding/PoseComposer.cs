using Hornbook.Physics;

namespace Hornbook.Bench.Files.Binding;

/// <summary>Makes a pose from the table of a thing that has one.</summary>
internal static class PoseComposer
{
    /// <summary>The pose.</summary>
    internal static Pose Compose(BoundTable thing) => new(
        new Vector(thing.Number("x"), thing.Number("y", 0.0), thing.Number("z")), thing.Number("turn", 0.0), thing.Number("tilt", 0.0), thing.Number("roll", 0.0));
}
