using Hornbook.Physics.Links;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;
using static Hornbook.Physics.Tests.Panels.PanelBenches;

namespace Hornbook.Physics.Tests.Panels;

/// <summary>Facts of the trade about grids between horns, through the solver (common practice, no source).</summary>
/// <remarks>The grid is fine, and so large that what goes round its edges is far below what is looked for: 400 mm, strips of 1.5 mm every 3 mm, 15 cm before the horn.</remarks>
public sealed class GridFactsTests
{
    private const double Degree = Math.PI / 180.0;

    private static readonly Pose Facing = new(new Vector(0.6, 0.0, 0.0), turn: Math.PI);
    private static readonly Pose Crossed = Facing with { Roll = 0.5 * Math.PI };
    private static readonly PreparedPanel Grid = Square(new StripGrid(3e-3, 1.5e-3), 0.4, AtOrigin).Panel;
    private static readonly PreparedPanel Box = Square(new TurnedSheet(new StripGrid(3e-3, 1.5e-3), 45.0 * Degree), 0.4, AtOrigin).Panel;
    private static readonly double OpenDb = LevelDb(Link.Amplitude(LargeHorn, AtOrigin, LargeHorn, Facing));

    [Fact]
    public void Strips_along_the_field_stop_the_wave_and_strips_across_it_let_it_pass()
    {
        // common practice, no source.
        Assert.InRange(ThroughDb(Grid, 0.0, Facing), -60.0, -20.0);
        Assert.InRange(ThroughDb(Grid, 90.0, Facing), -0.3, 0.1);
    }

    [Theory]
    [InlineData(90.0)]
    [InlineData(75.0)]
    [InlineData(60.0)]
    [InlineData(45.0)]
    public void Between_aligned_horns_a_good_grid_lets_pass_the_fourth_power_of_the_cosine(double roll)
    {
        // cos⁴ of the angle between field and the normal to the strips, tied to the grid across the field (common practice, no source).
        double law = 40.0 * Math.Log10(Math.Sin(roll * Degree));
        Close.Absolute(law, ThroughDb(Grid, roll, Facing) - ThroughDb(Grid, 90.0, Facing), 0.1);
    }

    [Theory]
    [InlineData(30.0)]
    [InlineData(45.0)]
    [InlineData(60.0)]
    [InlineData(135.0)]
    public void Crossed_horns_hear_each_other_again_by_a_quarter_of_sin_squared_of_twice_the_angle(double roll)
    {
        // ¼ sin² 2α, −6.02 dB at 45° (common practice, no source); tied to what the grid passes across the field, once for each half of the way.
        double law = Decibels.FromRatio(0.25 * Math.Pow(Math.Sin(2.0 * roll * Degree), 2.0));
        Close.Absolute(law, ThroughDb(Grid, roll, Crossed) - ThroughDb(Grid, 90.0, Facing), 0.1);
    }

    [Fact]
    public void Crossed_horns_without_a_grid_are_silent() =>
        Assert.True(LevelDb(Link.Amplitude(LargeHorn, AtOrigin, LargeHorn, Crossed)) < OpenDb - 100.0);

    [Fact]
    public void A_box_with_a_grid_at_45_degrees_to_its_handle_is_no_one_way_device()
    {
        // Field and box at 45°: held so that the strips lie along the field it stops the wave; flipped over about its handle they lie across, and it passes.
        Pose source = AtOrigin with { Roll = 45.0 * Degree };
        Pose receiver = Facing with { Roll = -45.0 * Degree };
        Pose held = new(new Vector(0.15, 0.0, 0.0));
        double asHeld = LevelDb(Illumination.Of(LargeHorn, source, [new PosedPanel(Box, held)]).Link(LargeHorn, receiver)) - OpenDb;
        double flipped = LevelDb(Illumination.Of(LargeHorn, source, [new PosedPanel(Box, held with { Turn = Math.PI })]).Link(LargeHorn, receiver)) - OpenDb;

        Assert.InRange(asHeld, -60.0, -20.0);
        Assert.InRange(flipped, -0.5, 0.1);

        // No one-way device: sent backwards through the same box, the same comes through.
        double backwards = LevelDb(Illumination.Of(LargeHorn, receiver, [new PosedPanel(Box, held)]).Link(LargeHorn, source)) - OpenDb;
        Close.Absolute(asHeld, backwards, 1.0);
    }

    [Theory]
    [InlineData(30.0)]
    [InlineData(60.0)]
    public void A_rolled_receiver_takes_the_square_of_the_cosine(double roll)
    {
        // Malus (common practice, no source).
        double rolled = LevelDb(Link.Amplitude(LargeHorn, AtOrigin, LargeHorn, Facing with { Roll = roll * Degree }));
        Close.Absolute(20.0 * Math.Log10(Math.Cos(roll * Degree)), rolled - OpenDb, 0.1);
    }

    private static double ThroughDb(PreparedPanel grid, double rollDegrees, Pose receiver)
    {
        PosedPanel posed = new(grid, new Pose(new Vector(0.15, 0.0, 0.0), roll: rollDegrees * Degree));
        return LevelDb(Illumination.Of(LargeHorn, AtOrigin, [posed]).Link(LargeHorn, receiver)) - OpenDb;
    }
}
