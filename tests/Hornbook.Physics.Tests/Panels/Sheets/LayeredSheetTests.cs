using System.Numerics;
using CsCheck;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Sheets;

public sealed class LayeredSheetTests
{
    private const double Degree = Math.PI / 180.0;

    private static readonly Gen<Layer> LosslessLayers =
        Gen.Select(Gen.Double[1.0, 10.0], Gen.Double[1e-4, 0.1], (permittivity, d) => new Layer(new LaboratoryDielectric("any", permittivity, 0.0), d));

    private static readonly Gen<Layer> LossyLayers = Gen.Select(
        Gen.Double[1.0, 10.0], Gen.Double[0.0, 1.0], Gen.Double[1e-4, 0.1], (permittivity, loss, d) => new Layer(new LaboratoryDielectric("any", permittivity, loss), d));

    [Theory]
    // Derived from the single-layer method of ITU-R P.2040-3 at 10 GHz: reflected and passed at 0°, at 45° across, at 45° within [dB].
    [InlineData("plasterboard", 12.5e-3, -7.99, -1.79, -7.00, -2.28, -15.86, -1.17, 0.02)]
    [InlineData("wood", 18e-3, -12.13, -1.45, -7.16, -2.42, -18.20, -1.41, 0.02)]
    [InlineData("concrete", 0.1, -8.08, -21.43, -5.78, -23.63, -11.59, -21.61, 0.03)]
    public void A_building_panel_reflects_and_passes_as_published(
        string material, double thickness, double r0, double t0, double rAcross, double tAcross, double rWithin, double tWithin, double tolerance)
    {
        LayeredSheet sheet = new(new Layer(Dielectrics.Find(material)!, thickness));
        AreLevels((r0, t0), sheet.At(10e9, 0.0, Polarisation.Across), tolerance);
        AreLevels((r0, t0), sheet.At(10e9, 0.0, Polarisation.Within), tolerance);
        AreLevels((rAcross, tAcross), sheet.At(10e9, 45.0 * Degree, Polarisation.Across), tolerance);
        AreLevels((rWithin, tWithin), sheet.At(10e9, 45.0 * Degree, Polarisation.Within), tolerance);
    }

    [Fact]
    public void A_plastic_sheet_reflects_passes_and_delays_as_derived()
    {
        // Derived (Airy sum): HDPE 2.37, 10 mm, 10.525 GHz, at right angles: −19.08 dB, −0.057 dB, 164.1° from face to face.
        LayeredSheet sheet = new(new Layer(Dielectrics.Find("HDPE")!, 10e-3));
        SheetResponse response = sheet.At(10.525e9, 0.0, Polarisation.Across);
        AreLevels((-19.08, -0.057), response, 0.01);
        double k = 2.0 * Math.PI * 10.525e9 / Constants.SpeedOfLight;
        Complex fromFaceToFace = response.Transmission * Complex.FromPolarCoordinates(1.0, -k * sheet.Thickness);
        Close.Absolute(164.1, fromFaceToFace.Phase / Degree, 0.1);
    }

    [Fact]
    public void Half_a_wave_inside_passes_everything() =>
        // Optics texts: ε' = 4 without loss, half a wave thick at 10 GHz, 7.4948 mm.
        Close.Relative(1.0, Plain(4.0, 0.25 * Constants.SpeedOfLight / 10e9).At(10e9, 0.0, Polarisation.Across).Passed, 1e-12);

    [Fact]
    public void A_quarter_wave_inside_reflects_what_optics_says()
    {
        // Optics texts: ((ε−1)/(ε+1))² = 0.36 for ε' = 4, a quarter wave thick.
        SheetResponse response = Plain(4.0, 0.125 * Constants.SpeedOfLight / 10e9).At(10e9, 0.0, Polarisation.Within);
        Close.Relative(0.36, response.Reflected, 1e-12);
        Close.Relative(0.64, response.Passed, 1e-12);
    }

    [Theory]
    // Brewster 1815: tan θ = √ε. 56.31°, 58.14°, 68.29° for these three (optics texts).
    [InlineData(2.25, 56.31)]
    [InlineData(2.59, 58.14)]
    [InlineData(6.31, 68.29)]
    public void At_Brewsters_angle_the_field_within_is_not_reflected_whatever_the_thickness(double permittivity, double degrees)
    {
        double angle = Math.Atan(Math.Sqrt(permittivity));
        Close.Absolute(degrees, angle / Degree, 0.005);
        Gen.Double[1e-4, 0.1].Sample(
            d => Assert.InRange(Plain(permittivity, d).At(10e9, angle, Polarisation.Within).Reflected, 0.0, 1e-24), iter: 20);
    }

    [Fact]
    public void Nothing_is_lost_without_losses() => Gen.Select(LosslessLayers.Array[1, 4], Gen.Double[0.0, 1.55], Gen.Enum<Polarisation>()).Sample(
        (layers, angle, polarisation) =>
            // Energy.
            Close.Absolute(0.0, new LayeredSheet(layers).At(10e9, angle, polarisation).Absorbed, 1e-9));

    [Fact]
    public void Nothing_is_gained_with_losses() => Gen.Select(LossyLayers.Array[1, 4], Gen.Double[0.0, 1.55], Gen.Enum<Polarisation>()).Sample(
        (layers, angle, polarisation) =>
            Assert.InRange(new LayeredSheet(layers).At(10e9, angle, polarisation).Absorbed, -1e-12, 1.0));

    [Fact]
    public void From_behind_it_passes_the_same() => Gen.Select(LossyLayers.Array[2, 4], Gen.Double[0.0, 1.5], Gen.Enum<Polarisation>()).Sample(
        (layers, angle, polarisation) =>
        {
            // Lorentz reciprocity.
            Complex forth = new LayeredSheet(layers).At(10e9, angle, polarisation).Transmission;
            Complex back = new LayeredSheet([.. layers.Reverse()]).At(10e9, angle, polarisation).Transmission;
            Close.Absolute(0.0, (forth - back).Magnitude, 1e-9 * forth.Magnitude);
        });

    [Fact]
    public void A_layer_cut_in_two_is_the_same_layer() => Gen.Select(LossyLayers, Gen.Double[0.1, 0.9], Gen.Double[0.0, 1.5], Gen.Enum<Polarisation>()).Sample(
        (layer, share, angle, polarisation) =>
        {
            // Law: an interface between equal media does nothing.
            SheetResponse whole = new LayeredSheet(layer).At(10e9, angle, polarisation);
            SheetResponse halves = new LayeredSheet(
                new Layer(layer.Material, share * layer.Thickness), new Layer(layer.Material, (1.0 - share) * layer.Thickness)).At(10e9, angle, polarisation);
            Close.Absolute(0.0, (whole.Reflection - halves.Reflection).Magnitude, 1e-12);
            Close.Absolute(0.0, (whole.Transmission - halves.Transmission).Magnitude, 1e-12);
        });

    [Fact]
    public void A_sheet_of_air_is_not_there() => Gen.Select(Gen.Double[1e-3, 0.1], Gen.Double[0.0, 1.5], Gen.Enum<Polarisation>()).Sample(
        (d, angle, polarisation) =>
        {
            // Eq. sheets (4): referred to the middle plane, T = 1.
            SheetResponse response = Plain(1.0, d).At(10e9, angle, polarisation);
            Close.Absolute(0.0, (response.Transmission - 1.0).Magnitude, 1e-12);
            Close.Absolute(0.0, response.Reflection.Magnitude, 1e-12);
        });

    [Fact]
    public void Foam_is_all_but_invisible()
    {
        // Derived: 50 mm of foam of 1.03 at 10.525 GHz passes better than −0.01 dB and reflects below −36 dB.
        SheetResponse response = new LayeredSheet(new Layer(Dielectrics.Find("polystyrene foam")!, 50e-3)).At(10.525e9, 0.0, Polarisation.Across);
        Assert.InRange(Decibels.FromRatio(response.Passed), -0.01, 0.0);
        Assert.InRange(Decibels.FromRatio(response.Reflected), -80.0, -36.0);
    }

    [Fact]
    public void A_pair_of_half_mirrors_makes_fringes_half_a_wave_apart()
    {
        // Optics texts: an interferometer of two equal sheets passes everything (of lossless sheets) once in each half wave of spacing.
        Layer mirror = new(new LaboratoryDielectric("any", 9.0, 0.0), Constants.SpeedOfLight / (10e9 * 4.0 * 3.0));
        double wave = Constants.SpeedOfLight / 10e9;
        double At(double gap) => new LayeredSheet(mirror, new Layer(Dielectrics.Find("air")!, gap), mirror).At(10e9, 0.0, Polarisation.Across).Passed;
        double best = Enumerable.Range(1, 400).Select(i => 0.01 + (i * wave / 800.0)).MaxBy(At);
        Close.Relative(At(best), At(best + (0.5 * wave)), 1e-9);
        Assert.True(At(best) > 0.99 && At(best + (0.25 * wave)) < 0.1);
    }

    [Fact]
    public void What_is_read_from_the_table_is_what_the_layers_say() => Gen.Select(
        LossyLayers.Array[1, 3], Gen.Double[0.0, 1.0].Array[100], Gen.Double[-Math.PI, Math.PI]).Sample(
        (layers, cosines, azimuth) =>
        {
            LayeredSheet sheet = new(layers), turned = new([.. layers.Reverse()]);
            ISheetResponse table = sheet.At(10e9);
            (double sin, double cos) = Math.SinCos(azimuth);
            foreach (double cosine in cosines)
            {
                double angle = Math.Acos(Math.Max(cosine, 1e-5)), sine = Math.Sin(angle);
                foreach (SheetFace face in Enum.GetValues<SheetFace>())
                {
                    LayeredSheet met = face == SheetFace.Back ? sheet : turned;
                    SheetResponse across = met.At(10e9, angle, Polarisation.Across), within = met.At(10e9, angle, Polarisation.Within);
                    SheetMatrices read = table.Arriving(face, sine * cos, sine * sin);
                    // Independent method: interface by interface at this angle.
                    Close.Absolute(0.0, (read.Reflection.AlongAlong - Mixed(within.Reflection, across.Reflection)).Magnitude, 1e-6);
                    Close.Absolute(0.0, (read.Transmission.AlongAlong - Mixed(within.Transmission, across.Transmission)).Magnitude, 1e-6);
                    Close.Absolute(0.0, (read.Transmission.AcrossAlong - (sin * cos * (within.Transmission - across.Transmission))).Magnitude, 1e-6);
                }
            }

            Complex Mixed(Complex within, Complex across) => (sin * sin * within) + (cos * cos * across);
        },
        iter: 50);

    [Fact]
    public void A_film_is_read_as_exactly_as_a_wall()
    {
        // derived: 10 µm of plastic, whose reflection changes within half a degree of grazing.
        LayeredSheet film = Plain(2.25, 1e-5);
        ISheetResponse table = film.At(10e9);
        Gen.Double[1e-5, 1e-2].Sample(cosine =>
        {
            Complex expected = film.At(10e9, Math.Acos(cosine), Polarisation.Within).Transmission;
            Close.Absolute(0.0, (table.Arriving(SheetFace.Back, Math.Sqrt(1.0 - (cosine * cosine)), 0.0).Transmission.AcrossAcross - expected).Magnitude, 1e-6);
        });
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(0.5 * Math.PI)]
    [InlineData(double.NaN)]
    public void An_angle_that_is_none_is_refused(double angle) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Plain(2.0, 0.01).At(10e9, angle, Polarisation.Across));

    [Fact]
    public void A_sheet_of_nothing_is_refused() => Assert.Throws<ArgumentException>(() => new LayeredSheet());

    private static LayeredSheet Plain(double permittivity, double thickness) =>
        new(new Layer(new LaboratoryDielectric("any", permittivity, 0.0), thickness));

    private static void AreLevels((double Reflected, double Passed) expectedDb, SheetResponse response, double toleranceDb)
    {
        Close.Absolute(expectedDb.Reflected, Decibels.FromRatio(response.Reflected), toleranceDb);
        Close.Absolute(expectedDb.Passed, Decibels.FromRatio(response.Passed), toleranceDb);
    }
}
