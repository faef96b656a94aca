using Hornbook.Physics.Antennas.Choosing;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;

namespace Hornbook.Physics.Tests.Antennas.Choosing;

/// <summary>What the horns of these tests are made for.</summary>
internal static class Feeds
{
    internal static Feed Bench { get; } = new(StandardGuides.Find("WR-90")!.Guide, 10.525e9, Conductor.Brass);

    internal static Feed Small { get; } = new(StandardGuides.Find("WR-42")!.Guide, 24.125e9, Conductor.Brass);

    internal static double Degrees(double? angle) => angle!.Value * 180.0 / Math.PI;

    internal static double Radians(double angleDeg) => angleDeg * Math.PI / 180.0;
}
