using System.Numerics;
using CsCheck;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Sheets;

public sealed class ImpedanceSheetTests
{
    private const double Frequency = 10.525e9;

    private static readonly Gen<double> Cosines = Gen.Double[0.0, 1.0];

    [Fact]
    public void A_film_of_half_the_impedance_of_vacuum_takes_half_of_the_power_and_no_other_takes_more()
    {
        double Taken(double resistance) => Absorbed(new ImpedanceSheet(resistance * Constants.VacuumImpedance), 1.0, within: false);

        // Woltersdorff 1934.
        Close.Relative(0.5, Taken(0.5), 1e-12);
        Gen.Double[0.01, 10.0].Sample(resistance => Assert.InRange(Taken(resistance), 0.0, 0.5 + 1e-12));
    }

    [Fact]
    public void It_is_the_limit_of_a_thin_conducting_layer()
    {
        // derived: εr = −jσ/ωε0 in a layer of 0.1 µm gives 1/σd per square, at any angle and either polarisation, to order kd/Z.
        const double thickness = 1e-7, conductivity = 3e4;
        double loss = conductivity / (2.0 * Math.PI * Frequency * Constants.ElectricConstant);
        LayeredSheet layer = new(new Layer(new LaboratoryDielectric("conductor", 1.0, loss), thickness));
        ISheetResponse film = new ImpedanceSheet(1.0 / (conductivity * thickness)).At(Frequency);
        foreach (double angle in new[] { 0.0, 0.5, 1.0, 1.4 })
        {
            SheetMatrices tilted = film.Arriving(SheetFace.Front, Math.Sin(angle), 0.0);
            Complex across = layer.At(Frequency, angle, Polarisation.Across).Reflection, within = layer.At(Frequency, angle, Polarisation.Within).Reflection;
            Close.Absolute(0.0, (tilted.Reflection.AlongAlong - across).Magnitude, 2e-4);
            Close.Absolute(0.0, (tilted.Reflection.AcrossAcross - within).Magnitude, 2e-4);
        }
    }

    [Fact]
    public void A_reactive_one_is_a_very_fine_grid_for_a_field_along_its_strips()
    {
        // Lamb 1898: X = η (p/λ) ln csc(πw/2p); w = p/2, p = λ/1000. What is left is of the order of (p/λ)².
        double period = 1e-3 * Constants.SpeedOfLight / Frequency;
        Complex grid = new StripGrid(period, 0.5 * period).Solved(Frequency).Arriving(SheetFace.Back, 0.0, 0.0).Reflection.AlongAlong;
        ImpedanceSheet sheet = new(new Complex(0.0, Constants.VacuumImpedance * 1e-3 * 0.5 * Math.Log(2.0)));
        Close.Absolute(0.0, (sheet.At(Frequency).Arriving(SheetFace.Front, 0.0, 0.0).Reflection.AlongAlong - grid).Magnitude, 1e-6);
    }

    [Fact]
    public void A_mirror_throws_back_the_share_that_is_asked_for() => Gen.Double[1e-3, 0.999].Sample(share =>
    {
        Complex reflection = ImpedanceSheet.Mirror(share).At(Frequency).Arriving(SheetFace.Back, 0.0, 0.0).Reflection.AcrossAcross;
        // Law: what it is made for.
        Close.Relative(share, Squared(reflection), 1e-9);
    });

    [Fact]
    public void A_half_mirror_has_half_the_impedance_of_vacuum() =>
        // derived: |R|² = 1/(1 + (2X/η)²).
        Close.Relative(0.5 * Constants.VacuumImpedance, ImpedanceSheet.Mirror(0.5).OhmsPerSquare.Imaginary, 1e-12);

    [Fact]
    public void Without_resistance_nothing_is_lost_at_any_angle() => Gen.Select(Gen.Double[-3.0, 3.0], Cosines, Gen.Bool).Sample((x, cosine, within) =>
        // Energy.
        Close.Absolute(0.0, Absorbed(new ImpedanceSheet(new Complex(0.0, Constants.VacuumImpedance * (x + Math.CopySign(1e-3, x)))), cosine, within), 1e-12));

    [Fact]
    public void With_resistance_some_is_lost_at_every_angle() => Gen.Select(Gen.Double[0.01, 3.0], Gen.Double[-3.0, 3.0], Gen.Double[0.01, 1.0], Gen.Bool).Sample(
        (r, x, cosine, within) =>
            // Energy.
            Assert.InRange(Absorbed(new ImpedanceSheet(Constants.VacuumImpedance * new Complex(r, x)), cosine, within), 1e-9, 0.5 + 1e-12));

    [Fact]
    public void Turned_in_its_plane_it_is_the_same()
    {
        ISheetResponse film = new ImpedanceSheet(new Complex(100.0, 50.0)).At(Frequency);
        SheetMatrices plain = film.Arriving(SheetFace.Front, 0.6, 0.0);
        SheetMatrices turned = film.Arriving(SheetFace.Front, 0.6 * Math.Cos(0.7), 0.6 * Math.Sin(0.7));
        TangentialMatrix back = turned.Reflection.Turned(Math.Cos(0.7), Math.Sin(0.7));
        // Symmetry.
        Close.Absolute(0.0, (plain.Reflection.AcrossAcross - back.AcrossAcross).Magnitude + (plain.Reflection.AlongAlong - back.AlongAlong).Magnitude, 1e-12);
        Close.Absolute(0.0, back.AcrossAlong.Magnitude + back.AlongAcross.Magnitude, 1e-12);
    }

    [Fact]
    public void A_pane_of_window_glass_is_a_half_mirror()
    {
        // Independent calculation of a single layer (Airy's sum) with the glass of ITU-R P.2040-3, 3 mm at 10.525 GHz; the page on films quotes the shares.
        LayeredSheet pane = new(new Layer(Dielectrics.Find("glass")!, 3e-3));
        SheetResponse straight = pane.At(Frequency, 0.0, Polarisation.Across);
        Close.Absolute(0.5128, straight.Reflected, 1e-4);
        Close.Absolute(0.4625, straight.Passed, 1e-4);
        Close.Absolute(0.6935, pane.At(Frequency, 0.25 * Math.PI, Polarisation.Across).Reflected, 1e-4);
        Close.Absolute(0.2909, pane.At(Frequency, 0.25 * Math.PI, Polarisation.Within).Reflected, 1e-4);
    }

    [Fact]
    public void So_are_strips_along_the_field()
    {
        // derived: the page on films, 2.3 mm wide and 11.4 mm apart.
        TangentialMatrix reflection = new StripGrid(11.4e-3, 2.3e-3).Solved(Frequency).Arriving(SheetFace.Back, 0.0, 0.0).Reflection;
        Close.Absolute(0.5, Squared(reflection.AlongAlong), 0.005);
        Assert.InRange(Squared(reflection.AcrossAcross), 0.0, 0.02);
    }

    [Theory]
    [InlineData(-1.0, 0.0)]
    [InlineData(0.0, 0.0)]
    [InlineData(double.NaN, 1.0)]
    [InlineData(1.0, double.PositiveInfinity)]
    public void An_impedance_that_is_none_is_refused(double real, double imaginary) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new ImpedanceSheet(new Complex(real, imaginary)));

    [Theory]
    [InlineData(0.0)]
    [InlineData(1.0)]
    [InlineData(double.NaN)]
    public void A_share_that_no_mesh_has_is_refused(double share) => Assert.Throws<ArgumentOutOfRangeException>(() => ImpedanceSheet.Mirror(share));

    private static double Absorbed(ImpedanceSheet sheet, double cosine, bool within)
    {
        SheetMatrices answer = sheet.At(Frequency).Arriving(SheetFace.Back, Math.Sqrt(1.0 - (cosine * cosine)), 0.0);
        return within
            ? 1.0 - Squared(answer.Reflection.AcrossAcross) - Squared(answer.Transmission.AcrossAcross)
            : 1.0 - Squared(answer.Reflection.AlongAlong) - Squared(answer.Transmission.AlongAlong);
    }

    private static double Squared(Complex a) => (a.Real * a.Real) + (a.Imaginary * a.Imaginary);
}
