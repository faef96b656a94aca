using CsCheck;
using Hornbook.Physics.Antennas.ClosedForm;
using Hornbook.Physics.Guides;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Antennas.ClosedForm;

public sealed class TextbookDesignTests
{
    private static readonly RectangularGuide Wr90 = StandardGuides.Find("WR-90")!.Guide;

    [Fact]
    public void By_slant_radii_as_in_the_example()
    {
        // C. A. Balanis, Antenna Theory, 3rd ed., Example 13.6 (p. 782): 22.6 dB at 11 GHz on WR-90 with c = 3e10 cm/s.
        // χ = 11.1157 after a start of 11.5539; ρ_e 30.316, ρ_h 32.753, a1 16.370, b1 12.859, p 27.285 cm (the book: 27.286).
        const double Wavelength = 3e8 / 11e9;
        double gain = Decibels.ToRatio(22.6);
        Close.Absolute(11.5539, gain / (2.0 * Math.PI * Math.Sqrt(2.0 * Math.PI)), 1e-4);

        // The book's guide is 2.286 cm × 1.016 cm.
        TextbookDesign design = TextbookDesign.BySlantRadii(Wr90, Wavelength, gain);
        Close.Absolute(11.1157, design.RadiusE / Wavelength, 1e-4);
        Close.Relative(0.30316, design.RadiusE, 1e-4);
        Close.Relative(0.32753, design.RadiusH, 1e-4);
        Close.Relative(0.16370, design.MouthWidth, 1e-4);
        Close.Relative(0.12859, design.MouthHeight, 1e-4);
        Close.Relative(0.27285, design.Length, 1e-4);
        Close.Absolute(6.002, design.MouthWidth / Wavelength, 0.001);
        Close.Absolute(4.715, design.MouthHeight / Wavelength, 0.001);
    }

    [Fact]
    public void By_axial_radii_as_in_the_example()
    {
        // W. L. Stutzman, G. A. Thiele, Antenna Theory and Design, horn design example, from memory: 21.75 dB at 8.75 GHz on WR-90, efficiency 0.51:
        // A = 18.61 cm, B = 14.75 cm, R = 29.56 cm with λ = 3.43 cm; with the exact λ 18.596, 14.737, 29.51 cm.
        TextbookDesign book = TextbookDesign.ByAxialRadii(Wr90, 0.0343, Decibels.ToRatio(21.75));
        Close.Relative(0.1861, book.MouthWidth, 1e-3);
        Close.Relative(0.1475, book.MouthHeight, 1e-3);
        Close.Relative(0.2956, book.Length, 1e-3);
        TextbookDesign exact = TextbookDesign.ByAxialRadii(Wr90, 299_792_458.0 / 8.75e9, Decibels.ToRatio(21.75));
        Close.Absolute(0.18596, exact.MouthWidth, 0.01e-3);
        Close.Absolute(0.14737, exact.MouthHeight, 0.01e-3);
        Close.Absolute(0.2951, exact.Length, 0.06e-3);
    }

    [Fact]
    public void Both_flares_begin_in_one_plane() => Gen.Double[12.0, 28.0].Sample(gainDb =>
    {
        // Law: seen from its own apex, each flare's side shrinks from the mouth to the guide over the common length.
        TextbookDesign axial = TextbookDesign.ByAxialRadii(Wr90, 0.0285, Decibels.ToRatio(gainDb));
        Close.Relative(axial.Length, axial.RadiusH * (1.0 - (Wr90.Width / axial.MouthWidth)), 1e-9);
        Close.Relative(axial.Length, axial.RadiusE * (1.0 - (Wr90.Height / axial.MouthHeight)), 1e-9);
    });

    [Fact]
    public void The_designed_horn_has_nearly_the_wanted_gain() => Gen.Double[15.0, 25.0].Sample(gainDb =>
    {
        // The book's efficiency of 0.51 against 0.5144: 0.04 dB.
        TextbookDesign design = TextbookDesign.ByAxialRadii(Wr90, 0.0285, Decibels.ToRatio(gainDb));
        double directivity = new FlaredMouth(design.MouthWidth, design.MouthHeight, design.RadiusH, design.RadiusE).Directivity(0.0285);
        Close.Absolute(gainDb + Decibels.FromRatio(0.5144 / 0.51), Decibels.FromRatio(directivity), 0.001);
    });

    [Theory]
    [InlineData(1.0)]
    [InlineData(0.0)]
    [InlineData(-5.0)]
    [InlineData(double.NaN)]
    public void A_gain_too_small_for_a_horn_is_refused(double gain)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => TextbookDesign.BySlantRadii(Wr90, 0.0285, gain));
        Assert.Throws<ArgumentOutOfRangeException>(() => TextbookDesign.ByAxialRadii(Wr90, 0.0285, gain));
    }
}
