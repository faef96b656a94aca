using System.Numerics;
using CsCheck;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Panels.Sheets.Strips;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Sheets;

public sealed class BoardedStripGridTests
{
    private const double Frequency = 10.525e9;
    private const double Wavelength = Constants.SpeedOfLight / Frequency;

    private static readonly Gen<(double Angle, double Azimuth)> Directions = Gen.Select(Gen.Double[0.0, 1.5], Gen.Double[-Math.PI, Math.PI]);

    private static readonly Gen<StripGrid> Strips =
        Gen.Select(Gen.Double[0.05, 0.45], Gen.Double[0.1, 0.9], (period, share) => new StripGrid(period * Wavelength, share * period * Wavelength));

    private static readonly Gen<BoardedStripGrid> LosslessGrids = Boarded(Gen.Const(0.0));

    private static readonly Gen<BoardedStripGrid> LossyGrids = Boarded(Gen.Double[0.0, 0.5]);

    [Fact]
    public void On_a_board_of_air_strips_are_free() => Gen.Select(Strips, Gen.Double[1e-5, 1e-2], Gen.Enum<SheetFace>(), Directions).Sample(
        (strips, thickness, face, direction) =>
        {
            ISheetResponse boarded = new BoardedStripGrid(strips, Board(1.0, 0.0, thickness), face).Solved(Frequency);
            TangentialMatrix free = SheetPower.Asked(strips.Solved(Frequency), SheetFace.Back, direction).Reflection;
            SheetMatrices met = SheetPower.Asked(boarded, face, direction);
            // Law: the strips stand half the thickness in front of the middle plane; what passes does not know. Functions and orders are those that leave
            // 1.3e-6 by Babinet, and the two ways cut them differently: 1.1e-6 was seen for strips of 86 % of 0.39 λ.
            double toMiddle = 2.0 * Math.PI / Wavelength * thickness * Math.Cos(direction.Angle);
            Close.Absolute(0.0, SheetPower.Difference(free * Complex.FromPolarCoordinates(1.0, toMiddle), met.Reflection), 3e-6);
            Close.Absolute(0.0, SheetPower.Difference(TangentialMatrix.Identity + free, met.Transmission), 3e-6);
        },
        iter: 20);

    [Fact]
    public void With_hardly_any_metal_across_the_field_it_is_the_bare_board()
    {
        LayeredSheet board = Board(4.35, 0.018, 1.6e-3);
        BoardedStripGrid grid = new(new StripGrid(2e-3, 0.02e-3), board);
        SheetMatrices strips = grid.At(Frequency).Arriving(SheetFace.Back, 0.4, 0.0), bare = board.At(Frequency).Arriving(SheetFace.Back, 0.4, 0.0);
        // derived: Babinet's shunt 4 (p/λ) ln csc(π(p−w)/2p) of a hundredth of the period is 3.5e-5, times (1 + ε)/2.
        Close.Absolute(0.0, (strips.Reflection.AcrossAcross - bare.Reflection.AcrossAcross).Magnitude, 2e-4);
        Close.Absolute(0.0, (strips.Transmission.AcrossAcross - bare.Transmission.AcrossAcross).Magnitude, 2e-4);
    }

    [Fact]
    public void Nothing_is_lost_on_a_board_without_losses() =>
        Gen.Select(LosslessGrids, Gen.Enum<SheetFace>(), Directions, Gen.Double[-Math.PI, Math.PI]).Sample(
            (grid, face, direction, field) =>
            {
                (double sin, double cos) = Math.SinCos(field);
                SheetMatrices sheet = SheetPower.Asked(grid.Solved(Frequency), face, direction);
                // Energy.
                Close.Absolute(0.0, SheetPower.Kept(sheet, direction, cos, new Complex(0.6 * sin, 0.8 * sin)), 1e-6);
            },
            iter: 60);

    [Fact]
    public void Nothing_is_gained_on_a_board_with_losses() =>
        Gen.Select(LossyGrids, Gen.Enum<SheetFace>(), Directions, Gen.Double[-Math.PI, Math.PI]).Sample(
            (grid, face, direction, field) =>
            {
                (double sin, double cos) = Math.SinCos(field);
                SheetMatrices sheet = SheetPower.Asked(grid.Solved(Frequency), face, direction);
                Assert.InRange(SheetPower.Kept(sheet, direction, cos, new Complex(0.6 * sin, 0.8 * sin)), -1e-6, 1.0);
            },
            iter: 60);

    [Fact]
    public void From_behind_it_passes_the_same() => Gen.Select(LossyGrids, Directions).Sample(
        (grid, direction) =>
        {
            ISheetResponse response = grid.Solved(Frequency);
            TangentialMatrix admittance = SheetPower.Admittance(direction);
            TangentialMatrix forth = admittance * SheetPower.Asked(response, SheetFace.Back, direction).Transmission;
            TangentialMatrix back = admittance * SheetPower.Asked(response, SheetFace.Front, direction).Transmission;
            // Lorentz reciprocity; the grid turned by half a turn is the same grid.
            TangentialMatrix transposed = new(back.AcrossAcross, back.AlongAcross, back.AcrossAlong, back.AlongAlong);
            Close.Absolute(0.0, SheetPower.Difference(forth, transposed), 1e-6 / Math.Cos(direction.Angle));
        },
        iter: 40);

    [Fact]
    public void Strips_far_finer_than_the_board_are_a_shunt_of_the_mean_permittivity()
    {
        // derived: Lamb 1898 and Ulrich 1967 for p ≪ λ, in air X = (p/λ) ln csc(πw/2p) along and B = 4 (p/λ) ln csc(π(p−w)/2p) across, the latter times
        // the mean (1 + ε)/2 of the permittivities on both sides (Ulrich 1967, from memory), in front of a line of the board's length.
        const double permittivity = 4.0, thickness = 1.6e-3, period = 0.02e-3, share = 0.5;
        ISheetResponse grid = new BoardedStripGrid(new StripGrid(period, share * period), Board(permittivity, 0.0, thickness)).At(Frequency);
        double logarithm = period / Wavelength * 0.5 * Math.Log(2.0);
        double phase = 2.0 * Math.PI / Wavelength * thickness * Math.Sqrt(permittivity), index = Math.Sqrt(permittivity);
        SheetMatrices asked = grid.Arriving(SheetFace.Front, 0.0, 0.0);
        Close.Absolute(0.0, asked.Transmission.AlongAlong.Magnitude - Passed(new Complex(0.0, -1.0 / logarithm)).Magnitude, 1e-6);
        Close.Absolute(0.0, asked.Transmission.AcrossAcross.Magnitude - Passed(new Complex(0.0, 4.0 * logarithm * 0.5 * (1.0 + permittivity))).Magnitude, 1e-6);

        Complex Passed(Complex shunt)
        {
            (Complex a, Complex b, Complex c) = (Math.Cos(phase), new Complex(0.0, Math.Sin(phase) / index), new Complex(0.0, index * Math.Sin(phase)));
            return 2.0 / (a + b + (c + (shunt * a)) + (a + (shunt * b)));
        }
    }

    [Fact]
    public void Twice_as_many_functions_change_less_than_promised() => Gen.Select(Strips, Gen.Double[1.0, 10.0], Gen.Double[1e-4, 1e-2], Directions).Sample(
        (strips, permittivity, thickness, direction) =>
        {
            double period = strips.Period / Wavelength, share = strips.StripWidth / strips.Period;
            LayeredSheet sheet = Board(permittivity, 0.01, thickness);
            Board board = new(new LayerStack(sheet.Layers, Frequency));
            SheetMatrices Of(StripFunctions functions) => SheetPower.Asked(
                new BoardedResponse(sheet.Tabulated(Frequency), SheetFace.Back, StripCurrents.Direct(new StripEquations(functions, board, period))), SheetFace.Back, direction);
            StripFunctions usual = StripFunctions.For(share, StripFunctions.CountFor(share, strips.StripWidth / thickness));
            // Convergence: the page on strip grids.
            Close.Absolute(0.0, SheetPower.Difference(Of(usual), Of(StripFunctions.For(share, 2 * usual.Count))), 1e-5);
        },
        iter: 20);

    [Fact]
    public void What_is_read_from_the_table_is_what_the_equations_say() => Gen.Select(LossyGrids, Directions.Array[30], Gen.Enum<SheetFace>()).Sample(
        (grid, directions, face) =>
        {
            ISheetResponse table = grid.At(Frequency), solved = grid.Solved(Frequency);
            foreach ((double Angle, double Azimuth) direction in directions)
            {
                // Independent method: the equations solved for this direction.
                Close.Absolute(0.0, SheetPower.Difference(SheetPower.Asked(solved, face, direction), SheetPower.Asked(table, face, direction)), 1e-6);
            }
        },
        iter: 15);

    [Fact]
    public void Its_two_faces_are_different()
    {
        ISheetResponse grid = new BoardedStripGrid(new StripGrid(5e-3, 2e-3), Board(4.35, 0.018, 1.6e-3)).At(Frequency);
        TangentialMatrix strips = grid.Arriving(SheetFace.Front, 0.0, 0.0).Reflection, board = grid.Arriving(SheetFace.Back, 0.0, 0.0).Reflection;
        Assert.True((strips.AlongAlong - board.AlongAlong).Magnitude > 0.1);
        Assert.True(board.AlongAlong.Magnitude < strips.AlongAlong.Magnitude);
    }

    [Fact]
    public void Equal_grids_share_a_table() => Assert.Same(
        new BoardedStripGrid(new StripGrid(5e-3, 2e-3), Board(4.0, 0.01, 1e-3)).At(Frequency),
        new BoardedStripGrid(new StripGrid(5e-3, 2e-3), Board(4.0, 0.01, 1e-3)).At(Frequency));

    private static Gen<BoardedStripGrid> Boarded(Gen<double> loss) => Gen.Select(
        Strips, Gen.Double[1.0, 6.0], loss, Gen.Double[1e-4, 1e-2], Gen.Enum<SheetFace>(),
        (strips, permittivity, tangent, thickness, face) => new BoardedStripGrid(strips, Board(permittivity, tangent, thickness), face));

    private static LayeredSheet Board(double permittivity, double loss, double thickness) =>
        new(new Layer(new LaboratoryDielectric("any", permittivity, loss), thickness));
}
