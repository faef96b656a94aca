using Hornbook.Physics;
using Hornbook.Physics.Exposure;
using Hornbook.Tabletop;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Tabletop;

public sealed class KeepOutShapeTests
{
    private const double Density = 0.5; // W/m², a limit of our own choice

    private static readonly ExposureField Field = ExposureField.Of(ExampleBench.Scene.Source, 0.02);

    private static readonly KeepOutShape Shape = KeepOutShape.Of(Field, Density);

    [Fact]
    public void On_the_axis_it_is_the_exact_distance() =>
        Close.Relative(KeepOut.OnAxis(Field, Density), Shape.OnAxis, 1e-12);

    [Theory]
    // Directions in the beam, between those of the grid; any sign of y and z, as the mouth is symmetrical.
    [InlineData(0.05, 0.02)]
    [InlineData(-0.11, 0.07)]
    [InlineData(0.10, -0.16)]
    public void Between_its_directions_it_is_near_the_exact_distance(double y, double z)
    {
        Vector direction = new(1.0, y, z);
        Close.Relative(KeepOut.Towards(Field, Density, direction), Shape.Towards(direction), 0.03); // a grid of 3°: to draw with
    }

    [Fact]
    public void Straight_behind_has_an_answer() => Assert.True(double.IsFinite(Shape.Towards(new Vector(-1.0, 0.0, 0.0))));
}
