using CsCheck;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Choosing;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Choosing;

public sealed class SheetThicknessTests
{
    private const double Frequency = 10.525e9;
    private const double Wavelength = Constants.SpeedOfLight / Frequency;

    private static readonly Gen<SheetThickness> Clear = Gen.Select(
        Gen.Double[1.5, 12.0], Gen.Double[0.0, 1.2], Gen.Bool,
        (permittivity, angle, across) => new SheetThickness(
            new LaboratoryDielectric("glass without loss", permittivity, 0.0), Frequency, angle, across ? Polarisation.Across : Polarisation.Within));

    [Fact]
    public void Without_loss_half_waves_are_clear_and_quarter_waves_bright() => Clear.Sample(
        sheet =>
        {
            double sine = Math.Sin(sheet.Angle), permittivity = sheet.Material.RelativePermittivity(Frequency).Real;
            double quarter = 0.25 * Wavelength / Math.Sqrt(permittivity - (sine * sine));
            // Near Brewster's angle a sheet throws nothing back at any thickness, and there is nothing to find.
            if (sheet.Of(quarter).Reflected < 1e-3)
            {
                return;
            }

            // Airy 1833: extrema of a clear plate at whole and half waves inside it. An extremum is found to the square root of what doubles hold.
            Close.Relative(2.0 * quarter, sheet.Clearest(1)!.Value, 1e-5);
            Close.Relative(4.0 * quarter, sheet.Clearest(2)!.Value, 1e-5);
            Close.Relative(quarter, sheet.Brightest(0)!.Value, 1e-5);
            Close.Absolute(0.0, sheet.Of(sheet.Clearest(1)!.Value).Reflected, 1e-8);
        },
        iter: 60);

    [Fact]
    public void At_right_angles_a_quarter_wave_throws_back_what_the_book_says()
    {
        // Born & Wolf, Principles of Optics, § 1.6: |R| = (ε − 1)/(ε + 1) of a quarter wave in air, from memory.
        SheetThickness sheet = new(new LaboratoryDielectric("glass without loss", 6.0, 0.0), Frequency, 0.0, Polarisation.Across);
        Close.Relative(25.0 / 49.0, sheet.Of(sheet.Brightest(0)!.Value).Reflected, 1e-9);
    }

    [Fact]
    public void A_half_mirror_throws_back_as_much_as_it_lets_pass() => Clear.Sample(
        sheet =>
        {
            if (sheet.HalfMirror() is not { } thickness)
            {
                // derived: a quarter wave throws most back, and it is not half.
                Assert.True(sheet.Of(sheet.QuarterWave).Reflected <= 0.5);
                return;
            }

            SheetResponse response = sheet.Of(thickness);
            // derived: half and half, since nothing is lost; the root is found to 1e-7 of a quarter wave.
            Close.Absolute(0.5, response.Reflected, 1e-6);
            Close.Absolute(0.5, response.Passed, 1e-6);
            Assert.True(thickness <= sheet.QuarterWave * 1.00001);
        },
        iter: 60);

    [Fact]
    public void Acrylic_glass_upright_is_no_half_mirror_at_any_thickness() =>
        // derived: ((2.59 − 1)/(2.59 + 1))² = 0.196 is the most that it throws back.
        Assert.Null(new SheetThickness(Dielectrics.Find("acrylic glass")!, Frequency, 0.0, Polarisation.Across).HalfMirror());

    [Fact]
    public void Loss_moves_the_extrema_little_or_leaves_none()
    {
        foreach (Dielectric material in Dielectrics.All.Where(material => material.Name != "air"))
        {
            SheetThickness sheet = new(material, Frequency, 0.25 * Math.PI, Polarisation.Across);
            foreach (double found in new[] { sheet.Clearest(1) / (2.0 * sheet.QuarterWave), sheet.Brightest(0) / sheet.QuarterWave }.OfType<double>())
            {
                // Our own bound: within a quarter of where they would be without loss.
                Assert.InRange(found, 0.75, 1.25);
            }
        }
    }
}
