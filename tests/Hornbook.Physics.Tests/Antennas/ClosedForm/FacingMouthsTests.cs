using CsCheck;
using Hornbook.Physics.Antennas.ClosedForm;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Antennas.ClosedForm;

public sealed class FacingMouthsTests
{
    private const double Wavelength = 0.0285;

    private static readonly Gen<FlaredMouth> AnyMouth = Gen.Select(
        Gen.Double[0.03, 0.2], Gen.Double[0.02, 0.2], Gen.Double[0.1, 0.5], Gen.Double[0.1, 0.5], (a, b, h, e) => new FlaredMouth(a, b, h, e));

    [Fact]
    public void Swapping_source_and_receiver_changes_nothing() =>
        Gen.Select(AnyMouth, AnyMouth, Gen.Double[0.2, 3.0]).Sample(
            (one, other, distance) => Close.Relative(
                FacingMouths.RelativePower(one, other, Wavelength, distance), FacingMouths.RelativePower(other, one, Wavelength, distance), 1e-9),
            iter: 40);

    [Fact]
    public void A_tiny_receiver_finds_the_gain_at_that_distance() =>
        Gen.Select(AnyMouth, Gen.Double[0.2, 3.0]).Sample(
            (mouth, distance) =>
            {
                FlaredMouth probe = new(1e-6, 1e-6, double.PositiveInfinity, double.PositiveInfinity);
                double expected = mouth.Directivity(Wavelength, distance) / mouth.Directivity(Wavelength);
                Close.Relative(expected, FacingMouths.RelativePower(mouth, probe, Wavelength, distance), 1e-9);
            },
            iter: 40);

    [Fact]
    public void Far_apart_nothing_is_lost() =>
        AnyMouth.Sample(
            mouth =>
            {
                // The loss falls as A²/λR: at 10 km it is below 1e-3 dB even for a mouth of 200 mm.
                double lossDb = Decibels.FromRatio(FacingMouths.RelativePower(mouth, mouth, Wavelength, 1e4));
                Close.Absolute(0.0, lossDb, 2e-3);
            },
            iter: 40);

    [Fact]
    public void A_phase_beyond_the_range_is_refused_and_not_guessed()
    {
        FlaredMouth mouth = new(1.0, 1.0, 10.0, 10.0);
        Assert.Throws<ArgumentOutOfRangeException>(() => FacingMouths.RelativePower(mouth, mouth, 0.001, 0.01));
    }
}
