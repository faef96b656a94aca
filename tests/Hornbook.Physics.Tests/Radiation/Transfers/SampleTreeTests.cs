using CsCheck;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Transfers;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation.Transfers;

public sealed class SampleTreeTests
{
    private static readonly Gen<Body> Bodies = Gen.OneOf(Body.Panel(new Vector(0.1, 0.2, 0.3), 0.2), Body.Cloud(Vector.Zero, 0.2, 500));

    private static IEnumerable<SampleBox> Boxes(SampleBox box) =>
        box.Halves is (SampleBox low, SampleBox high) ? [box, .. Boxes(low), .. Boxes(high)] : [box];

    private static void LieInTheirBoxes(SampleTree tree)
    {
        foreach (SampleBox box in Boxes(tree.Root))
        {
            for (int i = box.First; i < box.End; i++)
            {
                Vector way = tree.Points[i] - box.Place;

                // Rounding; and sides below a billionth of the body count as none.
                Assert.InRange(Math.Abs(Vector.Dot(way, tree.Axes.Forward)), 0.0, box.Half.X + 1e-9);
                Assert.InRange(Math.Abs(Vector.Dot(way, tree.Axes.Left)), 0.0, box.Half.Y + 1e-9);
                Assert.InRange(Math.Abs(Vector.Dot(way, tree.Axes.Up)), 0.0, box.Half.Z + 1e-9);
            }
        }
    }

    [Fact]
    public void Holds_every_point_once() => Bodies.Sample(
        body =>
        {
            SampleTree tree = body.Tree;
            Assert.Equal(Enumerable.Range(0, body.Points.Length), tree.Order.ToArray().Order());
            Assert.All(Enumerable.Range(0, body.Points.Length), i => Assert.Equal(body.Points[tree.Order[i]], tree.Points[i]));
        },
        iter: 10);

    [Fact]
    public void Every_point_lies_in_its_boxes() => Bodies.Sample(
        body =>
        {
            SampleTree tree = body.Tree;
            LieInTheirBoxes(tree);
        },
        iter: 10);

    [Fact]
    public void Halves_share_the_samples_of_the_whole() => Bodies.Sample(
        body => Assert.All(Boxes(body.Tree.Root), box =>
        {
            if (box.Halves is (SampleBox low, SampleBox high))
            {
                Assert.Equal((box.First, box.End, low.End), (low.First, high.End, high.First));
                Assert.Equal((box.FirstRow, box.RowCount), (low.FirstRow, low.RowCount + high.RowCount));
            }
            else
            {
                Assert.InRange(box.Count, 1, SampleTree.LeafCount);
            }
        }),
        iter: 10);

    [Fact]
    public void A_lattice_lies_in_rows_and_its_boxes_are_flat()
    {
        // Derived: 60 mm at the lattice step of 6 mm are ten samples; 100 samples are one leaf of ten rows.
        SampleTree tree = Body.Sheet(0.06, 0.06, new Pose(new Vector(0.3, 0.2, 0.1), 0.4, 0.3, 0.2)).Tree;
        Assert.Equal(10, tree.Root.RowCount);
        Close.Absolute(0.0, tree.Root.Half.Z, 0.0);
    }

    [Fact]
    public void The_longest_side_comes_first()
    {
        SampleTree tree = Body.Table(0.5, 0.2).Tree;
        Close.Absolute(1.0, Math.Abs(tree.Axes.Forward.X), 1e-12);
        Close.Absolute(1.0, Math.Abs(tree.Axes.Up.Z), 1e-12);
    }

    [Fact]
    public void Many_samples_in_one_place_are_one_box()
    {
        SampleTree tree = new Body([.. Enumerable.Repeat(new Vector(1.0, 2.0, 3.0), 300)], new(default, new(1, 0, 0), new(0, 1, 0), new(0, 0, 1))).Tree;
        Assert.Null(tree.Root.Halves);
        Close.Absolute(0.0, tree.Root.Radius, 0.0);
    }

    [Fact]
    public void Refuses_no_samples() => Assert.Throws<ArgumentException>(() => new Body([], default).Tree);

    // A body is sorted once, in its own frame, and then held in any pose.
    [Fact]
    public void Held_in_a_pose_its_samples_lie_in_their_boxes_and_are_those_of_the_body_there() => Bodies.Sample(
        body =>
        {
            Frame pose = Frame.Of(new Pose(new Vector(0.3, -0.2, 0.5), turn: 0.7, tilt: -0.4, roll: 1.9));
            SampleTree own = body.Tree, held = own.Posed(pose);
            Assert.Equal(own.Order.ToArray(), held.Order.ToArray());
            Assert.All(Enumerable.Range(0, body.Points.Length), i => Assert.InRange((held.Points[i] - pose.Place(body.Points[held.Order[i]])).Length, 0.0, 1e-12));
            LieInTheirBoxes(held);
        },
        iter: 10);
}
