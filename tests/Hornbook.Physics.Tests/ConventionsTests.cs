using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests;

public sealed class ConventionsTests
{
    [Fact]
    public void A_positive_turn_looks_to_the_left() =>
        Close.Absolute(1.0, new Pose(Vector.Zero, turn: Math.PI / 2).Forward.Y, 1e-15);

    [Fact]
    public void A_positive_tilt_looks_up() =>
        Close.Absolute(1.0, new Pose(Vector.Zero, tilt: Math.PI / 2).Forward.Z, 1e-15);

    [Fact]
    public void A_positive_roll_is_right_handed_about_the_axis()
    {
        // Right-handed about +x takes +z to −y.
        Pose rolled = new(Vector.Zero, roll: Math.PI / 2);
        Close.Absolute(-1.0, rolled.Up.Y, 1e-15);
        Close.Absolute(1.0, rolled.Left.Z, 1e-15);
    }
}
