using Hornbook.Physics.Links;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;
using static Hornbook.Physics.Tests.Panels.PanelBenches;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Tests.Panels;

public sealed class IlluminationTests
{
    private static readonly Pose Facing = new(new Vector(0.8, 0.0, 0.0), turn: Math.PI);
    private static readonly Pose HalfWay = new(new Vector(0.4, 0.0, 0.0));

    [Fact]
    public void A_bench_without_panels_is_the_open_link()
    {
        Illumination lit = Illumination.Of(LargeHorn, AtOrigin, []);

        Assert.Equal(Link.Amplitude(LargeHorn, AtOrigin, Probe, Facing), lit.Link(Probe, Facing));
        Assert.True(lit.IsSettled);
    }

    [Fact]
    public void A_sheet_of_air_changes_nothing()
    {
        PosedPanel air = Square(new LayeredSheet(new Layer(Dielectrics.Find("air")!, 10e-3)), 0.3, HalfWay);
        Complex open = Link.Amplitude(LargeHorn, AtOrigin, Probe, Facing);

        // derived: what is not there cannot act.
        Close.Absolute(0.0, (Illumination.Of(LargeHorn, AtOrigin, [air]).Link(Probe, Facing) - open).Magnitude / open.Magnitude, 1e-9);
    }

    [Fact]
    public void A_large_metal_plate_sends_what_the_mirrored_source_would_send()
    {
        // derived: law of images for a perfect mirror. What the edges of a plate of 1.2 m add is 0.06 dB, of one of 1.6 m less; coarse cells will do for it.
        PosedPanel mirror = Square(new Metal(), 1.6, new Pose(new Vector(0.6, 0.0, 0.0), turn: Math.PI * 0.75), 0.7);
        Pose receiver = new(new Vector(0.6, 0.6, 0.0), turn: -Math.PI / 2.0);
        Complex byWayOfMirror = Illumination.Of(LargeHorn, AtOrigin, [mirror]).Link(Probe, receiver)
            - Link.Amplitude(LargeHorn, AtOrigin, Probe, receiver);
        Complex unfolded = Link.Amplitude(LargeHorn, AtOrigin, Probe, new Pose(new Vector(1.2, 0.0, 0.0), turn: Math.PI));

        Close.Absolute(LevelDb(unfolded), LevelDb(byWayOfMirror), 0.05);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(0.7)]
    public void A_large_sheet_of_plastic_lets_through_what_its_plane_wave_response_says(double turn)
    {
        LayeredSheet acrylic = new(new Layer(Dielectrics.Find("acrylic glass")!, 5e-3));
        PosedPanel sheet = Square(acrylic, 0.9, HalfWay with { Turn = turn });
        Complex open = Link.Amplitude(LargeHorn, AtOrigin, Probe, Facing);
        Complex through = Illumination.Of(LargeHorn, AtOrigin, [sheet]).Link(Probe, Facing);

        // derived: the field of the beam is across the plane of incidence; the spread of directions in it and the sheet's edges leave 0.15 dB.
        double expected = Decibels.FromRatio(acrylic.At(Frequency, turn, Polarisation.Across).Passed);
        Close.Absolute(expected, LevelDb(through) - LevelDb(open), 0.15);
    }

    [Fact]
    public void A_panel_that_is_turned_about_by_half_a_turn_does_the_same_when_it_is_alike_on_both_sides()
    {
        PosedPanel plate = Square(new Metal(), 0.15, HalfWay with { Turn = 0.3 });
        PosedPanel turned = plate with { Pose = plate.Pose with { Turn = 0.3 + Math.PI } };
        Complex one = Illumination.Of(LargeHorn, AtOrigin, [plate]).Link(Probe, Facing);
        Complex other = Illumination.Of(LargeHorn, AtOrigin, [turned]).Link(Probe, Facing);

        // derived: symmetry.
        Close.Absolute(0.0, (one - other).Magnitude / one.Magnitude, 1e-9);
    }

    [Fact]
    public void The_order_in_which_panels_are_named_does_not_matter()
    {
        PosedPanel near = Square(new Metal(), 0.1, HalfWay with { Turn = 0.5 });
        PosedPanel far = Square(new Metal(), 0.15, new Pose(new Vector(0.55, 0.1, 0.0), turn: 0.4));
        Complex one = Illumination.Of(LargeHorn, AtOrigin, [near, far]).Link(Probe, Facing);
        Complex other = Illumination.Of(LargeHorn, AtOrigin, [far, near]).Link(Probe, Facing);

        // derived: sums in another order.
        Close.Absolute(0.0, (one - other).Magnitude / one.Magnitude, 1e-9);
    }

    [Fact]
    public void Behind_two_screens_it_is_darker_than_behind_one()
    {
        PosedPanel first = Square(new Metal(), 0.3, HalfWay);
        PosedPanel second = Square(new Metal(), 0.3, new Pose(new Vector(0.55, 0.0, 0.0), turn: 0.3));
        Illumination both = Illumination.Of(LargeHorn, AtOrigin, [first, second]);
        double one = LevelDb(Illumination.Of(LargeHorn, AtOrigin, [first]).Link(Probe, Facing));
        double open = LevelDb(Link.Amplitude(LargeHorn, AtOrigin, Probe, Facing));

        // derived: the wave that leaks round the first must not be doubled by the second, which a solver that does not add the shadow first would do.
        Assert.InRange(LevelDb(both.Link(Probe, Facing)), open - 40.0, one + 1.0);
        Assert.True(both.IsSettled);
        Assert.InRange(both.Sweeps, 2, 10);
    }

    [Fact]
    public void A_panel_that_moved_gives_what_a_bench_solved_anew_gives()
    {
        PosedPanel still = Square(new Metal(), 0.1, new Pose(new Vector(0.3, 0.05, 0.0), turn: 0.2));
        PosedPanel moved = Square(new Metal(), 0.15, new Pose(new Vector(0.5, 0.0, 0.0)));
        PosedPanel there = moved with { Pose = new Pose(new Vector(0.52, -0.03, 0.01), turn: 0.4) };

        // The panels change places in the list, too: what is kept must be found by what it is.
        Illumination kept = Illumination.Of(LargeHorn, AtOrigin, [still, moved]).With([there, still]);
        Assert.Equal(Illumination.Of(LargeHorn, AtOrigin, [there, still]).Link(Probe, Facing), kept.Link(Probe, Facing));
    }

    // The one nearer to the source, which throws something new inwards; the one beyond; by a hair, and by the breadth of a hand.
    [Theory]
    [InlineData(0, 0.001)]
    [InlineData(0, 0.08)]
    [InlineData(1, 0.001)]
    [InlineData(1, 0.08)]
    public void A_panel_that_moved_a_moment_ago_is_solved_to_the_same_and_after_a_small_move_sooner(int moved, double by)
    {
        PosedPanel[] panels =
        [
            Square(new Metal(), 0.1, new Pose(new Vector(0.3, 0.05, 0.0), turn: 0.2)),
            Square(new LayeredSheet(new Layer(Dielectrics.Find("glass")!, 4e-3)), 0.15, new Pose(new Vector(0.5, 0.0, 0.0))),
            Rectangle(new LayeredSheet(new Layer(Dielectrics.Find("wood")!, 25e-3)), 0.4, 0.8, new Pose(new Vector(0.4, 0.0, -0.15), tilt: 0.5 * Math.PI), 0.8),
        ];
        PosedPanel[] now = [.. panels];
        now[moved] = panels[moved] with { Pose = panels[moved].Pose with { Position = panels[moved].Pose.Position + new Vector(by, 0.5 * by, 0.0) } };

        Illumination anew = Illumination.Of(LargeHorn, AtOrigin, now);
        Illumination sooner = Illumination.Of(LargeHorn, AtOrigin, panels).Moved(now);
        Assert.True(sooner.IsSettled);
        Assert.True(by > 0.01 || sooner.Sweeps < anew.Sweeps);
        // derived: each may still miss two thousandths of the currents, 0.02 dB where all of them point the same way.
        Close.Absolute(LevelDb(anew.Link(Probe, Facing)), LevelDb(sooner.Link(Probe, Facing)), 0.02);
    }

    [Fact]
    public void In_the_hand_it_is_settled_sooner_and_goes_on_from_there_to_what_is_settled_as_before()
    {
        PosedPanel[] panels =
        [
            Square(new Metal(), 0.15, new Pose(new Vector(0.4, 0.0, 0.0))),
            Square(new LayeredSheet(new Layer(Dielectrics.Find("glass")!, 4e-3)), 0.15, new Pose(new Vector(0.3, 0.0, 0.0), turn: 0.1)),
        ];
        PosedPanel[] now = [panels[0], panels[1] with { Pose = new Pose(new Vector(0.31, 0.0, 0.0), turn: 0.1) }];
        Illumination there = Illumination.Of(LargeHorn, AtOrigin, panels), fine = there.Moved(now), held = there.Moved(now, Settling.InHand);
        Assert.True(held.Sweeps < fine.Sweeps);
        Assert.True(held.IsSettled);
        Assert.InRange(held.Residue, Settling.Fine.Residue, Settling.InHand.Residue);
        // derived: where all that is missing points the same way.
        Close.Relative(1.0, held.Link(Probe, Facing).Magnitude / fine.Link(Probe, Facing).Magnitude, 2.0 * Settling.InHand.Residue);

        Illumination putDown = held.With(now, held.Known);
        Assert.InRange(putDown.Residue, 0.0, Settling.Fine.Residue);
        Assert.True(putDown.Sweeps < Illumination.Of(LargeHorn, AtOrigin, now).Sweeps);
    }

    [Fact]
    public void Where_nothing_stayed_or_only_one_stands_a_moved_bench_is_solved_from_the_dark()
    {
        PosedPanel one = Square(new Metal(), 0.1, new Pose(new Vector(0.3, 0.05, 0.0), turn: 0.2)), there = one with { Pose = new Pose(new Vector(0.35, 0.0, 0.0)) };
        PosedPanel other = Square(new Metal(), 0.1, new Pose(new Vector(0.5, 0.0, 0.0)));
        Illumination lit = Illumination.Of(LargeHorn, AtOrigin, [one]);

        Assert.Equal(Illumination.Of(LargeHorn, AtOrigin, [there]).Link(Probe, Facing), lit.Moved([there]).Link(Probe, Facing));
        Assert.Equal(Illumination.Of(LargeHorn, AtOrigin, [there, other]).Link(Probe, Facing), lit.Moved([there, other]).Link(Probe, Facing));
        Assert.Equal(lit.Link(Probe, Facing), lit.Moved([one]).Link(Probe, Facing));
    }

    [Fact]
    public void How_strong_the_source_is_does_not_matter_to_how_plates_settle()
    {
        // An open guide a metre away raises currents far weaker than a horn close by; what comes out must be a number, and settled where it can be.
        Pose beyond = Facing with { Position = new Vector(1.5, 0.0, 0.0) };
        foreach ((double gap, bool settles) in new[] { (0.005, false), (0.05, true), (0.1, true) })
        {
            PosedPanel[] plates = [.. new[] { 1.0, 1.0 + gap }.Select(x => Square(new Metal(), 0.1, new Pose(new Vector(x, 0.0, 0.0))))];
            Illumination lit = Illumination.Of(Probe, AtOrigin, plates);
            Assert.Equal(settles, lit.IsSettled);
            Assert.True(Complex.IsFinite(lit.Link(Probe, beyond)));
            Assert.True(double.IsFinite(lit.Unsettled(Probe, beyond)));
        }
    }

    [Fact]
    public void Large_mirrors_three_half_waves_apart_with_the_source_between_do_not_settle_and_say_so()
    {
        // Coarse cells, to keep the test short.
        PosedPanel behind = Square(new Metal(), 0.4, new Pose(new Vector(0.3, 0.0, 0.0)), 0.5);
        PosedPanel before = Square(new Metal(), 0.4, new Pose(new Vector(0.3427, 0.0, 0.0)), 0.5);
        Illumination lit = Illumination.Of(LargeHorn, new Pose(new Vector(0.31, 0.0, 0.0)), [behind, before]);

        Assert.False(lit.IsSettled);
        Assert.Equal(Settling.Fine.MostSweeps, lit.Sweeps);
        Assert.InRange(lit.Unsettled(Probe, Facing) / lit.Link(Probe, Facing).Magnitude, 0.01, 30.0);
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.1)]
    public void Roughly_settled_is_sooner_done_and_off_by_what_may_be_missing(double gap)
    {
        PosedPanel[] plates = [.. new[] { 0.4, 0.4 + gap }.Select(x => Square(new Metal(), 0.1, new Pose(new Vector(x, 0.0, 0.0))))];
        Illumination fine = Illumination.Of(LargeHorn, AtOrigin, plates), rough = Illumination.Of(LargeHorn, AtOrigin, plates, settling: Settling.Rough);

        Assert.True(rough.IsSettled);
        Assert.InRange(rough.Sweeps, 1, fine.Sweeps - 1);
        Assert.InRange(rough.Residue, Settling.Fine.Residue, Settling.Rough.Residue);

        // derived: behind the plates the link is a difference of waves, so that it may miss more than the currents do; twice as much for two plates.
        Close.Relative(1.0, rough.Link(Probe, Facing).Magnitude / fine.Link(Probe, Facing).Magnitude, 2.0 * Settling.Rough.Residue);
        Assert.Equal(rough.Link(Probe, Facing), rough.With(plates).Link(Probe, Facing));
    }

    [Fact]
    public void A_plate_close_to_the_mouth_throws_back_more_than_one_far_away()
    {
        double EchoAt(double distance) => Illumination.Of(
            LargeHorn, AtOrigin, [Square(new Metal(), 0.3, new Pose(new Vector(distance, 0.0, 0.0)))]).SourceEcho().Magnitude;

        // derived: law of images; the mirrored horn stands twice as far away as the plate, whose edges add 0.2 dB.
        Complex mirrored = Link.Amplitude(LargeHorn, AtOrigin, LargeHorn, new Pose(new Vector(3.0, 0.0, 0.0), turn: Math.PI));
        Complex echo = Illumination.Of(LargeHorn, AtOrigin, [Square(new Metal(), 1.5, new Pose(new Vector(1.5, 0.0, 0.0)))]).SourceEcho();
        Close.Absolute(LevelDb(mirrored), LevelDb(echo), 0.3);
        Assert.InRange(EchoAt(0.05), 2.0 * EchoAt(0.4), 1.0);
    }

    [Fact]
    public void A_panel_is_brightest_where_the_beam_meets_it()
    {
        Illumination lit = Illumination.Of(LargeHorn, AtOrigin, [Square(new Metal(), 0.8, HalfWay with { Position = new Vector(0.4, 0.05, -0.05) })]);

        // derived: the axis of the horn meets the plate at y = z = 0, the plate's own middle is 7 cm away.
        Close.Absolute(0.0, (lit.Brightest(0) - new Vector(0.4, 0.0, 0.0)).Length, 0.01);
    }

    [Fact]
    public void The_field_of_the_lit_bench_at_a_point_is_what_its_currents_radiate()
    {
        PosedPanel plate = Square(new Metal(), 0.15, HalfWay);
        Illumination lit = Illumination.Of(LargeHorn, AtOrigin, [plate]);
        FieldSample[] inFront = new FieldSample[2];
        lit.Field(new Vector[] { new(0.39, 0.0, 0.0), new(0.41, 0.0, 0.0) }, inFront);

        // derived: behind the middle of a plate five waves wide it is darker than before it by far more than ten decibels.
        Assert.InRange(inFront[1].Electric.SquaredMagnitude / inFront[0].Electric.SquaredMagnitude, 0.0, 0.1);
    }

    [Fact]
    public void A_finer_raster_changes_a_lit_link_by_less_than_three_hundredths_of_a_decibel()
    {
        LayeredSheet acrylic = new(new Layer(Dielectrics.Find("acrylic glass")!, 5e-3));
        double At(double refinement) => LevelDb(Illumination.Of(
            LargeHorn, AtOrigin, [Square(acrylic, 0.3, HalfWay with { Turn = 0.7 }, refinement)]).Link(Probe, Facing));

        // derived: convergence of the sum over cells.
        Close.Absolute(At(2.0), At(1.0), 0.03);
    }
}
