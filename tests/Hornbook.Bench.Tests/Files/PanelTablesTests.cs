using System.Numerics;
using Hornbook.Bench.Files;
using Hornbook.Bench.Layout;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Files;

/// <summary>Panels and the table top, from the text to the plan.</summary>
public sealed class PanelTablesTests
{
    private const string Place = "x = \"70 cm\"\nz = \"25 cm\"\n";

    private static readonly string Minimal = File.ReadAllText(Repository.At("tests", "Hornbook.Bench.Tests", "Files", "minimal-bench.toml"));

    [Fact]
    public void A_plate_has_its_size_and_its_pose()
    {
        BenchPanel plate = Only("""
            [panels.plate]
            kind = "metal plate"
            width = "30 cm"
            height = "20 cm"
            x = "70 cm"
            y = "-5 cm"
            z = "25 cm"
            turn = "45 deg"
            tilt = "10 deg"
            roll = "-90 deg"
            """);

        Assert.Equal("plate", plate.Name);
        Assert.Equal("metal plate", plate.Kind);
        Assert.True(plate.Stands);
        Assert.IsType<Metal>(plate.Panel.Sheet);
        Assert.Equal((0.3, 0.2), (plate.Panel.Surface.Width, plate.Panel.Surface.Height));
        Assert.Equal(new Hornbook.Physics.Vector(0.7, -0.05, 0.25), plate.Pose.Position);
        Close.Relative(Math.PI / 4.0, plate.Pose.Turn, 1e-15);
        Close.Relative(Math.PI / 18.0, plate.Pose.Tilt, 1e-15);
        Close.Relative(-Math.PI / 2.0, plate.Pose.Roll, 1e-15);
    }

    [Fact]
    public void A_panel_that_lies_aside_keeps_its_pose()
    {
        BenchPanel plate = Only("[panels.plate]\nkind = \"metal plate\"\nwidth = \"30 cm\"\nheight = \"20 cm\"\naside = true\n" + Place);

        Assert.False(plate.Stands);
        Assert.Equal(new Hornbook.Physics.Vector(0.7, 0.0, 0.25), plate.Pose.Position);
    }

    [Fact]
    public void A_grid_has_its_strips_at_their_angle()
    {
        string grid = "[panels.grid]\nkind = \"strip grid\"\nwidth = \"15 cm\"\nheight = \"15 cm\"\nperiod = \"5 mm\"\nstrip_width = \"2 mm\"\n" + Place;

        StripGrid upright = Assert.IsType<StripGrid>(Only(grid).Panel.Sheet);
        TurnedSheet turned = Assert.IsType<TurnedSheet>(Only(grid + "strips = \"45 deg\"\n").Panel.Sheet);

        Assert.Equal((5e-3, 2e-3), (upright.Period, upright.StripWidth));
        Assert.IsType<StripGrid>(turned.Sheet);
        Close.Relative(Math.PI / 4.0, turned.Angle, 1e-15);
    }

    [Fact]
    public void A_grid_on_a_board_has_its_strips_on_the_front()
    {
        string grid = "[panels.grid]\nkind = \"strip grid\"\nwidth = \"15 cm\"\nheight = \"15 cm\"\nperiod = \"5 mm\"\nstrip_width = \"2 mm\"\n" + Place;

        BoardedStripGrid etched = Assert.IsType<BoardedStripGrid>(Only(grid + "board = { material = \"FR-4\", thickness = \"1.6 mm\" }\n").Panel.Sheet);
        TurnedSheet turned = Assert.IsType<TurnedSheet>(Only(grid + "strips = \"45 deg\"\nboard = { material = { permittivity = 3 }, thickness = \"2 mm\" }\n").Panel.Sheet);

        Assert.Equal(new StripGrid(5e-3, 2e-3), etched.Strips);
        Assert.Equal(SheetFace.Front, etched.Face);
        Layer board = Assert.Single(etched.Board.Layers), stated = Assert.Single(Assert.IsType<BoardedStripGrid>(turned.Sheet).Board.Layers);
        Assert.Equal(("FR-4", 1.6e-3), (board.Material.Name, board.Thickness));
        Assert.Equal(new Complex(3.0, 0.0), stated.Material.RelativePermittivity(10e9));
        Close.Relative(Math.PI / 4.0, turned.Angle, 1e-15);
    }

    [Fact]
    public void A_grid_of_wires_has_its_wires_at_their_angle()
    {
        string grid = "[panels.grid]\nkind = \"wire grid\"\ndiameter = \"20 cm\"\nperiod = \"5 mm\"\nwire_diameter = \"0.5 mm\"\n" + Place;

        WireGrid upright = Assert.IsType<WireGrid>(Only(grid).Panel.Sheet);
        TurnedSheet turned = Assert.IsType<TurnedSheet>(Only(grid + "wires = \"-30 deg\"\n").Panel.Sheet);

        Assert.Equal((5e-3, 0.5e-3), (upright.Period, upright.Diameter));
        Assert.Equal(upright, turned.Sheet);
        Close.Relative(-Math.PI / 6.0, turned.Angle, 1e-15);
    }

    [Fact]
    public void A_material_is_a_name_or_two_numbers()
    {
        const string sheet = "[panels.sheet]\nkind = \"sheet\"\nwidth = \"15 cm\"\nheight = \"15 cm\"\nthickness = \"3 mm\"\n" + Place;

        Layer named = Assert.Single(Assert.IsType<LayeredSheet>(Only(sheet + "material = \"PTFE\"\n").Panel.Sheet).Layers);
        Layer stated = Assert.Single(Assert.IsType<LayeredSheet>(Only(sheet + "material = { permittivity = 4, loss_tangent = 0.25 }\n").Panel.Sheet).Layers);

        Assert.Equal("PTFE", named.Material.Name);
        Assert.Equal(3e-3, named.Thickness);
        Assert.Equal(new Complex(4.0, -1.0), stated.Material.RelativePermittivity(10e9)); // derived: 4 (1 − 0.25 j)
    }

    [Fact]
    public void Layers_stay_in_the_order_of_the_file()
    {
        BenchPanel window = Only("""
            [panels.window]
            kind = "layered sheet"
            width = "30 cm"
            height = "30 cm"
            layers = [{ material = "glass", thickness = "4 mm" }, { material = { permittivity = 1 }, thickness = "12 mm" }]
            x = "70 cm"
            z = "25 cm"
            """);

        Assert.Equal([4e-3, 12e-3], Assert.IsType<LayeredSheet>(window.Panel.Sheet).Layers.Select(layer => layer.Thickness));
    }

    [Theory]
    [InlineData("width = \"30 cm\"\nheight = \"20 cm\"\nslits = { count = 2, width = \"25 mm\", length = \"16 cm\", spacing = \"90 mm\" }", 0.06 - (2 * 0.025 * 0.16))]
    [InlineData("width = \"30 cm\"\nheight = \"30 cm\"\nslits = { count = 3, width = \"1 cm\", length = \"10 cm\", spacing = \"3 cm\", angle = \"30 deg\" }", 0.09 - (3 * 0.001))]
    [InlineData("width = \"30 cm\"\nheight = \"20 cm\"\nholes = [{ width = \"4 cm\", height = \"6 cm\", y = \"-7 cm\", angle = \"45 deg\" }]", 0.06 - 0.0024)]
    [InlineData("diameter = \"30 cm\"\nrings = [{ inner_diameter = \"10 cm\", outer_diameter = \"20 cm\" }]\nholes = [{ diameter = \"4 cm\" }]", Math.PI * (0.0225 - 0.0100 + 0.0025 - 0.0004))]
    [InlineData("corners = [{ y = \"-10 cm\", z = \"-10 cm\" }, { y = \"10 cm\", z = \"-10 cm\" }, { y = \"0 cm\", z = \"15 cm\" }]", 0.025)]
    public void Outlines_and_openings_leave_the_area_that_they_should(string keys, double area)
    {
        // derived: areas of rectangles, circles and a triangle
        BenchPanel plate = Only($"[panels.plate]\nkind = \"metal plate\"\n{Place}{keys}\n");

        Close.Relative(area, plate.Panel.Surface.Cells(5e-3).Sum(cell => cell.Area), 2e-3); // circles are cut into cells to a thousandth
    }

    [Fact]
    public void Slits_lie_at_their_spacing_to_either_side_and_turn_as_a_roll_turns()
    {
        BenchPanel plate = Only($"[panels.plate]\nkind = \"metal plate\"\n{Place}width = \"40 cm\"\nheight = \"40 cm\"\nslits = {{ count = 2, width = \"2 cm\", length = \"10 cm\", spacing = \"20 cm\", angle = \"30 deg\" }}\n");
        Hornbook.Physics.Vector[] middles = [.. plate.Panel.Surface.Loops.Where(loop => loop.Max(point => point.Length) < 0.2).Select(Middle).OrderBy(middle => middle.Y)];

        // derived: 10 cm to either side along (cos 30°, sin 30°) in own y and z
        Close.Absolute(-0.0866025, middles[0].Y, 1e-6);
        Close.Absolute(-0.05, middles[0].Z, 1e-6);
        Close.Absolute(0.0866025, middles[1].Y, 1e-6);
        Close.Absolute(0.05, middles[1].Z, 1e-6);

        static Hornbook.Physics.Vector Middle(IReadOnlyList<Hornbook.Physics.Vector> loop) => new(0.0, loop.Average(point => point.Y), loop.Average(point => point.Z));
    }

    [Theory]
    [InlineData("upright", 0.15)]
    [InlineData("across", 0.2)]
    public void A_bent_plate_is_hollow_in_front_and_straight_along_its_direction(string about, double half)
    {
        BenchPanel bent = Only($"[panels.a]\nkind = \"bent plate\"\n{Place}width = \"30 cm\"\nheight = \"40 cm\"\nradius = \"50 cm\"\nbent_about = \"{about}\"\n");
        double chord = 2.0 * 0.5 * Math.Sin(half / 0.5);

        // derived: an arc of half length s and radius R is 2 R sin(s/R) wide and R (1 − cos(s/R)) deep
        Assert.IsType<Metal>(bent.Panel.Sheet);
        Close.Relative(about == "upright" ? chord : 0.3, bent.Panel.Surface.Width, 1e-9);
        Close.Relative(about == "upright" ? 0.4 : chord, bent.Panel.Surface.Height, 1e-9);
        Close.Relative(0.5 * (1.0 - Math.Cos(half / 0.5)), bent.Panel.Surface.Loops.SelectMany(loop => loop).Max(point => point.X), 1e-9);
    }

    [Fact]
    public void A_dish_has_its_depth_in_front()
    {
        BenchPanel dish = Only($"[panels.a]\nkind = \"dish\"\n{Place}diameter = \"36 cm\"\nfocal_length = \"12 cm\"\n");

        // derived: D²/16f
        Close.Relative(0.36 * 0.36 / (16.0 * 0.12), dish.Panel.Surface.Loops.SelectMany(loop => loop).Max(point => point.X), 1e-9);
    }

    [Theory]
    [InlineData("", 10.525e9, true)]
    [InlineData("cut_for = \"24 GHz\"", 24e9, true)]
    [InlineData("centre = \"closed\"", 10.525e9, false)]
    public void A_zone_plate_is_cut_for_its_wavelength(string more, double frequency, bool isOpen)
    {
        BenchPanel plate = Only($"[panels.a]\nkind = \"zone plate\"\n{Place}diameter = \"60 cm\"\nzones = 2\nfocal_length = \"30 cm\"\n{more}\n");
        double half = 0.5 * Hornbook.Physics.Constants.SpeedOfLight / frequency;

        // derived: the way by the edge of zone n is n half wavelengths longer, r² = (f + nλ/2)² − f²
        double first = half * (0.6 + half), second = 2.0 * half * (0.6 + (2.0 * half));
        Close.Relative(Math.PI * (0.09 - (isOpen ? first : second - first)), plate.Panel.Surface.Cells(5e-3).Sum(cell => cell.Area), 2e-3); // circles are cut into cells to a thousandth
    }

    [Fact]
    public void A_zone_plate_may_be_cut_for_two_places()
    {
        BenchPanel plate = Only($"[panels.a]\nkind = \"zone plate\"\n{Place}diameter = \"60 cm\"\nzones = 1\nfrom_source = \"45 cm\"\nto_receiver = \"40 cm\"\n");
        double radius = plate.Panel.Surface.Loops.Min(loop => loop.Max(point => point.Length));
        double longer = Math.Sqrt((0.45 * 0.45) + (radius * radius)) + Math.Sqrt((0.4 * 0.4) + (radius * radius)) - 0.85;

        // derived: the first zone ends where the way is half a wavelength longer
        Close.Relative(0.5 * Hornbook.Physics.Constants.SpeedOfLight / 10.525e9, longer, 1e-3); // circles are drawn as polygons
    }

    [Fact]
    public void A_half_mirror_throws_back_half_of_the_power_unless_it_says_otherwise()
    {
        const string mirror = "[panels.a]\nkind = \"half mirror\"\nwidth = \"30 cm\"\nheight = \"30 cm\"\n" + Place;

        Close.Relative(0.5, Reflected(Only(mirror)), 1e-9);
        Close.Relative(0.25, Reflected(Only(mirror + "reflection = 0.5\n")), 1e-9); // derived: 0.5²

        static double Reflected(BenchPanel panel) => Math.Pow(panel.Panel.Sheet.At(10e9).Arriving(SheetFace.Front, 0.0, 0.0).Reflection.AcrossAcross.Magnitude, 2.0);
    }

    [Fact]
    public void A_film_has_its_resistance_and_an_absorber_its_rating()
    {
        ImpedanceSheet film = Assert.IsType<ImpedanceSheet>(Only("[panels.a]\nkind = \"film\"\ndiameter = \"30 cm\"\nresistance = \"377 ohm\"\n" + Place).Panel.Sheet);
        Absorber foam = Assert.IsType<Absorber>(Only("[panels.a]\nkind = \"absorber\"\ndiameter = \"30 cm\"\nthickness = \"5 cm\"\nreflection = \"-20 dB\"\n" + Place).Panel.Sheet);

        Assert.Equal(377.0, film.OhmsPerSquare);
        Close.Relative(0.01, foam.Returned, 1e-12); // derived: −20 dB of power
        Assert.Equal((0.0, 0.05), (foam.Passed, foam.Thickness));
    }

    [Fact]
    public void An_absorber_that_keeps_nothing_fits_whatever_its_last_bit()
    {
        Absorber none = Assert.IsType<Absorber>(Only("[panels.a]\nkind = \"absorber\"\ndiameter = \"30 cm\"\nthickness = \"5 cm\"\nreflection = 0.8\ntransmission = 0.6\n" + Place).Panel.Sheet);

        Close.Relative(0.36, none.Passed, 1e-12); // derived: 0.6²
    }

    [Fact]
    public void The_table_top_has_a_sheet_where_its_material_is_said()
    {
        TableTop bare = Plan(Minimal).Table;
        TableTop plywood = Plan(Minimal.Replace("width = \"70 cm\"", "width = \"70 cm\"\nmaterial = \"plywood\"\nthickness = \"20 mm\"", StringComparison.Ordinal)).Table;

        Assert.Null(bare.Panel);
        Assert.Equal(20e-3, plywood.Panel!.Sheet.Thickness);
        Assert.Equal((0.7, 1.8), (plywood.Panel.Surface.Width, plywood.Panel.Surface.Height));
        Assert.Equal(-10e-3, plywood.Pose.Position.Z);
    }

    [Fact]
    public void A_bench_without_panels_has_none()
    {
        Assert.Empty(Plan(Minimal).Panels);
        Assert.Empty(Plan(Minimal + "\n[panels]\n").Panels);
    }

    private static BenchPanel Only(string table) => Assert.Single(Plan(Minimal + "\n" + table).Panels);

    private static BenchPlan Plan(string text)
    {
        BenchFile file = BenchFile.Parse(text, "bench.toml");
        Assert.Empty(file.Problems);
        return file.Plan!;
    }
}
