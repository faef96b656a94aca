using CsCheck;
using Hornbook.Tabletop.Sheets;
using Xunit;

namespace Hornbook.Tests.Tabletop.Sheets;

public sealed class ConvexHullTests
{
    private static readonly Gen<SheetPoint> Place = Gen.Select(Gen.Int[-9, 9], Gen.Int[-9, 9], (x, y) => new SheetPoint(x, y));

    [Fact]
    public void It_turns_one_way_and_leaves_no_point_outside() => Place.Array[3, 20].Sample(points =>
    {
        IReadOnlyList<SheetPoint> hull = ConvexHull.Of(points);
        for (int i = 0; hull.Count > 2 && i < hull.Count; i++)
        {
            SheetPoint a = hull[i], b = hull[(i + 1) % hull.Count];
            Assert.All(points, p => Assert.True(((b.X - a.X) * (p.Y - a.Y)) - ((b.Y - a.Y) * (p.X - a.X)) >= 0.0));
        }

        Assert.All(hull, corner => Assert.Contains(corner, points));
    });

    [Fact]
    public void Points_inside_are_left_out() => Assert.Equal(
        4, ConvexHull.Of([new(0.0, 0.0), new(2.0, 0.0), new(1.0, 1.0), new(2.0, 2.0), new(0.0, 2.0), new(1.0, 0.0)]).Count);
}
