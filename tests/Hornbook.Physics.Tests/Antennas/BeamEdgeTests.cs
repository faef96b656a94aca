using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Antennas;

public static class BeamEdgeTests
{
    private static readonly RectangularGuide Guide = StandardGuides.Find("WR-90")!.Guide;
    private static readonly Antenna Horn = Antenna.At(new Horn(Guide, 0.094, 0.079, 0.066, Conductor.Brass), 10.525e9);

    [Fact]
    public static void Is_half_of_the_half_power_width_in_both_planes()
    {
        foreach ((PatternPlane plane, Vector side) in new[] { (PatternPlane.Magnetic, new Vector(0.0, 1.0, 0.0)), (PatternPlane.Electric, new Vector(0.0, 0.0, -2.0)) })
        {
            double width = BeamShape.Of(Horn, plane).HalfPowerWidth!.Value;
            Close.Absolute(0.5 * width, BeamEdge.HalfPower(Horn, side)!.Value, 2e-3); // a tenth of a degree
        }
    }

    [Fact]
    public static void Lies_between_the_two_planes_in_between()
    {
        double electric = BeamEdge.HalfPower(Horn, new Vector(0.0, 0.0, 1.0))!.Value, magnetic = BeamEdge.HalfPower(Horn, new Vector(0.0, 1.0, 0.0))!.Value;
        Assert.InRange(BeamEdge.HalfPower(Horn, new Vector(0.3, 1.0, 1.0))!.Value, Math.Min(electric, magnetic), Math.Max(electric, magnetic));
    }

    [Fact]
    public static void Is_the_same_to_either_side_of_a_symmetrical_mouth() => Close.Relative(
        BeamEdge.HalfPower(Horn, new Vector(0.0, 1.0, 0.4))!.Value, BeamEdge.HalfPower(Horn, new Vector(0.0, -1.0, -0.4))!.Value, 1e-9);

    [Fact]
    public static void Refuses_a_side_along_the_axis() =>
        Assert.Throws<ArgumentOutOfRangeException>("side", () => BeamEdge.HalfPower(Horn, new Vector(1.0, 0.0, 0.0)));
}
