using CsCheck;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Antennas.Choosing;
using Hornbook.Physics.Media;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Antennas.Choosing;

public sealed class WallLayoutTests
{
    private static readonly Gen<Horn> AnyHorn = Gen.Select(Gen.Double[0.023, 0.4], Gen.Double[0.0102, 0.4], Gen.Double[0.02, 0.5])
        .Select((width, height, length) => new Horn(Feeds.Bench.Guide, width, height, length, Conductor.Brass));

    [Fact]
    public void Panels_never_overlap_and_never_leave_the_sheet() => Gen.Select(AnyHorn, Gen.Double[0.0, 0.02]).Sample((horn, seam) =>
    {
        Lie_apart(WallLayout.OneRow(horn, seam));
        Lie_apart(WallLayout.TwoRows(horn, seam));
    });

    [Fact]
    public void Nesting_saves_what_the_slanted_edges_would_waste()
    {
        // Derived: two trapezoids head to tail take throat + mouth, side by side they would take twice the mouth.
        Horn horn = new(Feeds.Bench.Guide, 0.1, 0.08, 0.1, Conductor.Brass);
        HornWall broad = HornWall.Broad(horn, 0.0);
        double pair = broad.Mouth + (0.5 * (broad.Throat + broad.Mouth));
        Close.Relative(Math.Max(pair, 1.5 * 0.08 + (0.5 * 0.01016)), WallLayout.TwoRows(horn, 0.0).Width, 1e-12);
    }

    [Fact]
    public void The_four_panels_close_to_a_pyramid() => AnyHorn.Sample(horn =>
    {
        // Law: neighbours share their slanted edge, whose length in space is √(L² + ((A−a)/2)² + ((B−b)/2)²).
        double edge = Math.Sqrt((horn.Length * horn.Length)
            + (0.25 * Math.Pow(horn.MouthWidth - horn.Guide.Width, 2.0)) + (0.25 * Math.Pow(horn.MouthHeight - horn.Guide.Height, 2.0)));
        Close.Relative(edge, Leg(HornWall.Broad(horn, 0.0)), 1e-12);
        Close.Relative(edge, Leg(HornWall.Side(horn)), 1e-12);
    });

    [Fact]
    public void A_seam_is_as_wide_as_asked_square_to_its_edge()
    {
        // Derived: the edge leans by φ, tan φ = (A−a)/(2 height); a strip of 8 mm square to it is 8/cos φ wide along the mouth.
        Horn horn = new(Feeds.Bench.Guide, 0.1, 0.08, 0.1, Conductor.Brass);
        HornWall bare = HornWall.Broad(horn, 0.0), seamed = HornWall.Broad(horn, 0.008);
        double lean = Math.Atan(0.5 * (bare.Mouth - bare.Throat) / bare.Height);
        Close.Relative(0.008, 0.5 * (seamed.Mouth - bare.Mouth) * Math.Cos(lean), 1e-9);
        Close.Relative(seamed.Mouth - bare.Mouth, seamed.Throat - bare.Throat, 1e-9);
    }

    [Fact]
    public void Corners_enclose_the_panels_area() => AnyHorn.Sample(horn =>
    {
        // Independent: the surveyor's formula over the corners, against (throat + mouth)/2 × height; positive because they go round counter-clockwise.
        foreach (PlacedWall placed in WallLayout.OneRow(horn, 0.005).Walls)
        {
            double twice = 0.0;
            for (int i = 0; i < 4; i++)
            {
                (double x0, double y0) = placed.Corners[i];
                (double x1, double y1) = placed.Corners[(i + 1) % 4];
                twice += (x0 * y1) - (x1 * y0);
            }

            Close.Relative(0.5 * (placed.Wall.Throat + placed.Wall.Mouth) * placed.Wall.Height, 0.5 * twice, 1e-9);
        }
    });

    /// <summary>Checks at many heights that no two walls overlap and that none sticks out.</summary>
    internal static void Lie_apart(WallLayout layout)
    {
        const double Slack = 1e-12;
        Assert.Equal(4, layout.Walls.Count);
        for (int i = 0; i <= 50; i++)
        {
            double y = layout.Height * i / 50.0;
            (double Left, double Right)[] cuts = [.. layout.Walls.Select(p => Cut(p, y)).Where(cut => cut.HasValue).Select(cut => cut!.Value).OrderBy(cut => cut.Left)];
            Assert.All(cuts, cut => Assert.True(cut.Left >= -Slack && cut.Right <= layout.Width + Slack));
            Assert.All(cuts.Zip(cuts.Skip(1)), pair => Assert.True(pair.First.Right <= pair.Second.Left + Slack));
        }
    }

    private static (double Left, double Right)? Cut(PlacedWall placed, double y)
    {
        double share = (y - placed.Base) / placed.Wall.Height;
        if (share is < 0.0 or > 1.0)
        {
            return null;
        }

        double below = placed.Turned ? placed.Wall.Throat : placed.Wall.Mouth, above = placed.Turned ? placed.Wall.Mouth : placed.Wall.Throat;
        double half = 0.5 * (below + (share * (above - below)));
        return (placed.Centre - half, placed.Centre + half);
    }

    private static double Leg(HornWall wall) => Math.Sqrt((wall.Height * wall.Height) + (0.25 * Math.Pow(wall.Mouth - wall.Throat, 2.0)));
}
