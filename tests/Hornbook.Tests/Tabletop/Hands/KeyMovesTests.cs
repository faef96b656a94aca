using Hornbook.Physics;
using Hornbook.Tabletop.Hands;
using Hornbook.Tabletop.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Tabletop.Hands;

public sealed class KeyMovesTests
{
    private const double Degree = Math.PI / 180.0;

    private static readonly Pose Start = new(new Vector(0.5, 0.0, 0.2));

    [Fact]
    public void Arrows_go_where_they_point_in_either_view()
    {
        // 1 cm, and 1 mm with Shift: our own choice.
        Close.Absolute(0.01, Step(SheetView.Plan, "ArrowUp", fine: false).Y, 1e-15);
        Close.Absolute(0.001, Step(SheetView.Elevation, "ArrowUp", fine: true).Z, 1e-15);
        Close.Absolute(-0.01, Step(SheetView.Elevation, "ArrowLeft", fine: false).X, 1e-15);
    }

    [Fact]
    public void A_key_that_means_nothing_is_no_move()
    {
        Assert.Null(KeyMoves.After(Start, Grip.Move, SheetView.Plan, "x", fine: false));
        Assert.Null(KeyMoves.After(Start, Grip.Turn, SheetView.Plan, "Tab", fine: false));
    }

    [Fact]
    public void The_right_arrow_turns_to_the_right() =>
        Close.Absolute(-5.0, KeyMoves.After(Start, Grip.Turn, SheetView.Plan, "ArrowRight", fine: false)!.Value.Turn / Degree, 1e-12);

    [Fact]
    public void Turning_on_and_on_comes_round()
    {
        Pose pose = Start;
        for (int i = 0; i < 72; i++)
        {
            pose = KeyMoves.After(pose, Grip.Move, SheetView.Plan, "l", fine: false)!.Value;
            Assert.InRange(pose.Turn, -Math.PI, Math.PI);
        }

        // derived: 72 steps of 5° are one turn.
        Close.Absolute(0.0, pose.Turn, 1e-12);
    }

    private static Vector Step(SheetView view, string key, bool fine) =>
        KeyMoves.After(Start, Grip.Move, view, key, fine)!.Value.Position - Start.Position;
}
