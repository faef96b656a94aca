using Hornbook.Physics;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Hands;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Tabletop.Hands;

public sealed class PoseFieldTests
{
    private static readonly Pose Start = new(new Vector(0.5, -0.1, 0.2), 0.1, 0.2, 0.3);

    [Fact]
    public void What_is_typed_is_read_back_and_nothing_else_changes()
    {
        foreach (PoseField field in PoseField.In(LengthUnit.Centimetre))
        {
            Pose typed = field.Typed(Start, "12.5");
            Assert.Equal("12.5", field.Text(typed));
            Assert.All(PoseField.In(LengthUnit.Centimetre).Where(f => f.Key != field.Key), other => Close.Absolute(other.Get(Start), other.Get(typed), 0.0));
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData(null)]
    [InlineData("NaN")]
    [InlineData("1e999")]
    [InlineData("12,5")]
    public void What_is_no_number_changes_nothing(string? text) =>
        Assert.All(PoseField.In(LengthUnit.Centimetre), field => Assert.Equal(Start, field.Typed(Start, text)));

    [Fact]
    public void An_angle_is_kept_within_one_turn()
    {
        // derived: 190° is the same direction as −170°.
        Assert.Equal("-170", PoseField.In(LengthUnit.Centimetre).Single(f => f.Key == "turn").Text(PoseField.In(LengthUnit.Centimetre).Single(f => f.Key == "turn").Typed(Start, "190")));
    }

    [Fact]
    public void Inches_are_typed_and_read_as_inches()
    {
        PoseField along = PoseField.In(LengthUnit.Inch).Single(f => f.Key == "along");
        // derived: an inch is 25.4 mm.
        Close.Relative(0.254, along.Typed(Start, "10").Position.X, 1e-12);
        Assert.Equal("10", along.Text(along.Typed(Start, "10")));
        Assert.Equal("in", along.Unit);
    }
}
