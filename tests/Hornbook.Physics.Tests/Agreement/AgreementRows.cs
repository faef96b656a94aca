using Hornbook.Physics.Antennas;
using Hornbook.Physics.Antennas.ClosedForm;
using Hornbook.Physics.Detection;
using Hornbook.Physics.Exposure;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Physics.Tests.Agreement;

/// <summary>Published values that tell most about what can be relied on. "mem." in the source: quoted from memory of it.</summary>
internal static class AgreementRows
{
    private const double Degree = Math.PI / 180.0;

    private const double Inch = 25.4e-3;

    private static readonly RectangularGuide Wr90 = new(0.9 * Inch, 0.4 * Inch);

    // The horn of the design example of [StutzmanThiele2012]: 8.75 GHz, A 18.61, B 14.75, throat to mouth 29.56 cm.
    private static readonly Antenna OptimumHorn = Antenna.At(new Horn(Wr90, 0.1861, 0.1475, 0.2956, Conductor.Brass), 8.75e9);

    private static readonly Antenna OpenEnd = Antenna.At(new OpenGuide(Wr90, Conductor.Brass), 10e9);

    // 32 times the area of WR-90.
    private static readonly Antenna TableHorn = Antenna.At(new Horn(Wr90, 94e-3, 79e-3, 66e-3, Conductor.Brass), 10.5e9);

    /// <summary>All rows, in the order of the table.</summary>
    internal static IReadOnlyList<AgreementRow> All { get; } = [.. Guides(), .. ClosedForms(), .. Fields(), .. Grids(), .. Hearing(), .. Exposure(), .. Trade()];

    private static IEnumerable<AgreementRow> Guides()
    {
        yield return new("WR-90, cut-off of TE10", "[EiaRs261], mem.", 6.557, Wr90.CutoffFrequency / 1e9, "GHz", 3, 0.0005);

        // Width 1.07 cm, height 0.43 cm, filled with ε_r = 2.08.
        GuideMode mode = GuideModes.First(new RectangularGuide(1.07e-2, 0.43e-2), 4, 2.08)[3];
        yield return new(
            "filled guide 10.7 × 4.3 mm, cut-off of its fourth mode", "[Pozar2012] Example 3.1, mem.", 26.07, mode.CutoffFrequency / 1e9, "GHz", 2, 0.03, "the book takes c = 3e8 m/s");

        double depth = Conductors.Find("copper")!.SkinDepth(10e9);
        yield return new("copper at 10 GHz, skin depth", "[Pozar2012] Example 1.2, mem.", 0.660, depth * 1e6, "µm", 3, 0.0005);
    }

    private static IEnumerable<AgreementRow> ClosedForms()
    {
        // All lengths in wavelengths.
        FlaredMouth sectoral = new(0.5, 2.75, double.PositiveInfinity, 6.0);
        yield return new(
            "E-plane horn, 2.75 λ high, closed form", "[Balanis2016] § 13.2, mem.", 11.07, Decibels.FromRatio(sectoral.Directivity(1.0)), "dBi", 2, 0.03, "the book reads its Fresnel integrals from a table");

        FlaredMouth pyramid = new(5.5, 2.75, 6.0, 6.0);
        yield return new(
            "pyramidal horn, 5.5 × 2.75 λ, closed form", "[Balanis2016] § 13.4, mem.", 18.78, Decibels.FromRatio(pyramid.Directivity(1.0)), "dBi", 2, 0.06, "as above");

        TextbookDesign design = TextbookDesign.BySlantRadii(Wr90, 2.7273e-2, Decibels.ToRatio(22.6));
        yield return new("optimum horn for 22.6 dB at 11 GHz, length", "[Balanis2016] § 13.4, mem.", 27.286, design.Length * 100.0, "cm", 3, 0.003, "rounding in the book's steps");

        TextbookDesign other = TextbookDesign.ByAxialRadii(Wr90, 3.43e-2, Decibels.ToRatio(21.75));
        yield return new("optimum horn for 21.75 dB at 8.75 GHz, width", "[StutzmanThiele2012] § 9.4, mem.", 18.61, other.MouthWidth * 100.0, "cm", 2, 0.02, "rounding in the book's steps");

        yield return new(
            "E-plane phase centre behind the mouth, s = 0.20", "[Milligan2005], mem.", 28.6, 100.0 * new PhasedLine(LineTaper.Uniform, 0.20).PhaseCentreShare, "% of ρ", 1, 0.1);
        yield return new(
            "H-plane phase centre behind the mouth, t = 0.20", "[Milligan2005], mem.", 13.4, 100.0 * new PhasedLine(LineTaper.Cosine, 0.20).PhaseCentreShare, "% of ρ", 1, 0.1);

        yield return new(
            "even disc measured at 2D²/λ, loss of gain", "[HollisLyonClayton1970], mem.", 0.06, -Decibels.FromRatio(FarZone.DiscFactor(0, Math.PI / 8.0)), "dB", 2, 0.005);
    }

    private static IEnumerable<AgreementRow> Fields()
    {
        // The two norms differ by 0.1 to 0.2 dB for horns, and the book's efficiency of 0.51 is short of its formula's by 0.03 dB.
        yield return new(
            "optimum horn 18.61 × 14.75 cm at 8.75 GHz, exact field", "[StutzmanThiele2012] § 9.4, mem.", 21.75, Decibels.FromRatio(OptimumHorn.Directivity), "dBi", 2, 0.25, "over the power radiated, not the power through the mouth");

        yield return new(
            "the same, half-power width in the E plane", "[StutzmanThiele2012], mem.: 54° λ/B", 54.0 * OptimumHorn.Wavelength / 0.1475, Width(OptimumHorn, PatternPlane.Electric), "°", 1, 0.3, "obliquity of the wave at the mouth");
        yield return new(
            "the same, half-power width in the H plane", "[StutzmanThiele2012], mem.: 78° λ/A", 78.0 * OptimumHorn.Wavelength / 0.1861, Width(OptimumHorn, PatternPlane.Magnetic), "°", 1, 0.3, "obliquity of the wave at the mouth");

        // 21.6 × 10 GHz × 22.86 mm.
        yield return new(
            "open WR-90 at 10 GHz, gain", "[KandaOrr1987], mem.: fit to measurements", 6.94, Decibels.FromRatio(OpenEnd.Gain), "dBi", 2, 0.7, "the fit is good to 0.7 dB");

        double level = FarPattern.Towards(OpenEnd, PatternPlane.Magnetic, 30.0 * Degree).CoPolar / OpenEnd.Directivity;
        yield return new(
            "the same, at 30° in the H plane", "[Yaghjian1984] first method, mem.", -2.45, Decibels.FromRatio(level), "dB", 2, 0.2, "no free test: the current on the rim is fitted to a like value");
    }

    private static IEnumerable<AgreementRow> Grids()
    {
        TangentialMatrix passed = new StripGrid(5e-3, 2.5e-3).Solved(10.525e9).Arriving(SheetFace.Back, 0.0, 0.0).Transmission;
        yield return new(
            "strips of 2.5 mm each 5 mm at 10.525 GHz, field along passes", "[Marcuvitz1951] § 5.18, mem.", -18.263, 2.0 * Decibels.FromRatio(passed.AlongAlong.Magnitude), "dB", 2, 0.03);
        yield return new(
            "the same, field across passes", "[Marcuvitz1951] § 5.19, mem.", -0.0653, 2.0 * Decibels.FromRatio(passed.AcrossAcross.Magnitude), "dB", 3, 0.001);
    }

    private static IEnumerable<AgreementRow> Hearing()
    {
        yield return new(
            "zero-bias diode at 25 °C, junction resistance", "[Agilent1999]", 9.0, Diode.Hsms285x.JunctionResistance(298.15) / 1e3, "kΩ", 0, 0.5);
        yield return new(
            "smallest step of pitch that is heard at 1 kHz", "[WierJesteadtGreen1977], mem.", 1.95, PitchSteps.DifferenceLimen(1000.0), "Hz", 2, 0.005);
        yield return new("middle C where A is 440 Hz", "ISO 16, mem.", 261.63, new Note(60, 0.0).Frequency, "Hz", 2, 0.005);
    }

    private static IEnumerable<AgreementRow> Exposure()
    {
        ExposureLimit local = ExposureLimits.Find("icnirp-2020-local-public")!;
        yield return new(
            "limit for the public at the end of its formula, 300 GHz", "[Icnirp2020]", 20.0, local.PowerDensity(300e9), "W/m²", 0, 0.1);
        yield return new(
            "field strength that goes with 10 W/m²", "1999/519/EC: 61 V/m", 61.0, ExposureLimits.Find("eu-1999-public")!.FieldStrength(10.525e9), "V/m", 0, 0.5);
    }

    private static IEnumerable<AgreementRow> Trade()
    {
        Antenna open = Antenna.At(new OpenGuide(Wr90, Conductor.Brass), 10.5e9);
        yield return new("open WR-90 at 10.5 GHz, gain", "common practice", 6.8, Decibels.FromRatio(open.Gain), "dBi", 1, 0.2, "no test of the field: the current on the rim is fitted to it");
        yield return new("horn of 32 guide areas, gain", "common practice", 16.6, Decibels.FromRatio(TableHorn.Gain), "dBi", 1, 0.1, "a rule of thumb");

        double mean = 0.5 * (Width(TableHorn, PatternPlane.Electric) + Width(TableHorn, PatternPlane.Magnetic));
        yield return new("the same, half-power width, mean of both planes", "common practice", 22.0, mean, "°", 0, 1.5, "a rule of thumb");
        yield return new("the same, beginning of its far zone", "common practice", 60.0, TableHorn.FarDistance * 100.0, "cm", 0, 3.0, "a rule of thumb");

        // 0.1 W/m² is the strictest of the published limits; Friis' formula with the far gain would say 60.5 cm.
        double away = KeepOut.OnAxis(ExposureField.Of(TableHorn, 10e-3), 0.1);
        yield return new("the same with 10 mW, distance for 0.1 W/m²", "common practice", 60.0, away * 100.0, "cm", 0, 7.0, "so close the gain is 1.1 dB less than far away");
    }

    private static double Width(Antenna antenna, PatternPlane plane) => BeamShape.Of(antenna, plane).HalfPowerWidth!.Value / Degree;
}
