using System.Numerics;
using CsCheck;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Sheets;

public sealed class AbsorberTests
{
    private const double Frequency = 10.525e9;

    private static readonly Gen<(double Returned, double Passed)> Ratings =
        Gen.Select(Gen.Double[0.0, 1.0], Gen.Double[0.0, 1.0], (returned, share) => (returned, share * (1.0 - returned)));

    [Fact]
    public void At_right_angles_it_does_what_it_is_rated_for() => Ratings.Sample(rating =>
    {
        SheetMatrices answer = new Absorber(rating.Returned, rating.Passed, 0.05).At(Frequency).Arriving(SheetFace.Front, 0.0, 0.0);
        // Law: the rating.
        Close.Absolute(rating.Returned, Squared(answer.Reflection.AcrossAcross), 1e-12);
        Close.Absolute(rating.Passed, Squared(answer.Transmission.AlongAlong), 1e-12);
        Assert.Equal(Complex.Zero, answer.Reflection.AcrossAlong);
    });

    [Fact]
    public void At_no_angle_does_it_make_power() => Gen.Select(Ratings, Gen.Double[0.0, 1.0], Gen.Double[-Math.PI, Math.PI]).Sample((rating, sine, phase) =>
    {
        SheetMatrices answer = new Absorber(rating.Returned, rating.Passed, 0.05).At(Frequency).Arriving(SheetFace.Back, sine, 0.0);
        foreach ((Complex r, Complex t) in new[]
        {
            (answer.Reflection.AcrossAcross, answer.Transmission.AcrossAcross), (answer.Reflection.AlongAlong, answer.Transmission.AlongAlong),
        })
        {
            // Energy, for waves from one side and for waves from both with any phase between them.
            Assert.InRange(Squared(r) + Squared(t), 0.0, 1.0 + 1e-12);
            Complex other = Complex.FromPolarCoordinates(1.0, phase);
            Assert.InRange(Squared(r + (other * t)) + Squared((other * r) + t), 0.0, 2.0 + 1e-12);
        }
    });

    [Theory]
    // derived: ((1 − cos θ)/(1 + cos θ))², for both polarisations; the page on films quotes these levels.
    [InlineData(45.0, -15.3)]
    [InlineData(60.0, -9.5)]
    public void A_perfect_one_gets_worse_with_the_angle(double degrees, double levelDb)
    {
        SheetMatrices answer = new Absorber(0.0, 0.0, 0.05).At(Frequency).Arriving(SheetFace.Back, Math.Sin(degrees * Math.PI / 180.0), 0.0);
        Close.Absolute(levelDb, Decibels.FromRatio(Squared(answer.Reflection.AcrossAcross)), 0.05);
        Close.Absolute(levelDb, Decibels.FromRatio(Squared(answer.Reflection.AlongAlong)), 0.05);
    }

    [Fact]
    public void Without_loss_at_right_angles_there_is_none_at_any() => Gen.Select(Gen.Double[0.0, 1.0], Gen.Double[0.0, 1.0]).Sample((returned, sine) =>
    {
        SheetMatrices answer = new Absorber(returned, 1.0 - returned, 0.0).At(Frequency).Arriving(SheetFace.Back, sine, 0.0);
        // Energy: both walls are then purely reactive. Where next to nothing is returned, rounding leaves 1.2e-9.
        Close.Absolute(1.0, Squared(answer.Reflection.AlongAlong) + Squared(answer.Transmission.AlongAlong), 1e-8);
        Close.Absolute(1.0, Squared(answer.Reflection.AcrossAcross) + Squared(answer.Transmission.AcrossAcross), 1e-8);
    });

    [Fact]
    public void Where_the_wave_grazes_everything_is_thrown_back() => Ratings.Sample(rating =>
    {
        SheetMatrices answer = new Absorber(0.9 * rating.Returned, 0.9 * rating.Passed, 0.0).At(Frequency).Arriving(SheetFace.Back, 0.0, 1.0);
        // derived: z is finite and cos θ is 0.
        Close.Absolute(0.0, (answer.Reflection.AcrossAcross + 1.0).Magnitude, 1e-6);
        Close.Absolute(0.0, (answer.Reflection.AlongAlong - 1.0).Magnitude, 1e-6);
        Close.Absolute(0.0, answer.Transmission.AlongAlong.Magnitude + answer.Transmission.AcrossAcross.Magnitude, 1e-6);
    });

    [Theory]
    [InlineData(-0.1, 0.0, 0.0)]
    [InlineData(1.1, 0.0, 0.0)]
    [InlineData(0.6, 0.5, 0.0)]
    [InlineData(0.1, -0.1, 0.0)]
    [InlineData(0.1, 0.1, -1.0)]
    [InlineData(double.NaN, 0.1, 0.1)]
    public void An_absorber_that_is_none_is_refused(double returned, double passed, double thickness) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Absorber(returned, passed, thickness));

    private static double Squared(Complex a) => (a.Real * a.Real) + (a.Imaginary * a.Imaginary);
}
