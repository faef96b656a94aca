using CsCheck;
using Hornbook.Physics.Panels.Sheets;
using Xunit;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Tests.Panels.Sheets;

public sealed class TurnedSheetTests
{
    // common practice, no source: the middle of the oscillators' band and a grid as it is etched for it
    private const double Frequency = 10e9;

    private static readonly StripGrid Grid = new(5e-3, 2.5e-3);

    private static readonly LayeredSheet Glass = new(new Layer(Hornbook.Physics.Media.Dielectrics.Find("glass")!, 4e-3));

    private static readonly Gen<(double Across, double Along)> Arrivals =
        Gen.Select(Gen.Double[0.0, 0.95], Gen.Double[-Math.PI, Math.PI], (sine, azimuth) => (sine * Math.Cos(azimuth), sine * Math.Sin(azimuth)));

    [Fact]
    public void A_sheet_that_is_the_same_in_all_directions_stays_what_it_is() =>
        Gen.Select(Arrivals, Gen.Double[-4.0, 4.0]).Sample((arrival, angle) =>
        {
            SheetMatrices straight = Glass.At(Frequency).Arriving(SheetFace.Front, arrival.Across, arrival.Along);
            SheetMatrices turned = new TurnedSheet(Glass, angle).At(Frequency).Arriving(SheetFace.Front, arrival.Across, arrival.Along);

            Same(straight.Reflection, turned.Reflection, 1e-6); // the sheet's own response may be tabulated
            Same(straight.Transmission, turned.Transmission, 1e-6);
        });

    [Fact]
    public void Strips_turned_by_45_degrees_mix_what_they_stop_with_what_they_pass()
    {
        SheetMatrices straight = Grid.At(Frequency).Arriving(SheetFace.Front, 0.0, 0.0);
        TangentialMatrix turned = new TurnedSheet(Grid, Math.PI / 4.0).At(Frequency).Arriving(SheetFace.Front, 0.0, 0.0).Reflection;
        Complex across = straight.Reflection.AcrossAcross, along = straight.Reflection.AlongAlong;

        // derived: with u' = (u + v)/√2, v' = (v − u)/√2, the field along u' is thrown back by `across`, that along v' by `along`
        Same(new TangentialMatrix((across + along) / 2.0, (across - along) / 2.0, (across - along) / 2.0, (across + along) / 2.0), turned, 1e-12);
        Assert.True(turned.AcrossAlong.Magnitude > 0.4);
    }

    [Fact]
    public void A_positive_angle_is_a_positive_roll()
    {
        // derived: rolled by 30° the strips lie along (0, −sin 30°, cos 30°); a field along them meets R of the strips and stays along them
        const double angle = Math.PI / 6.0;
        TangentialMatrix turned = new TurnedSheet(Grid, angle).At(Frequency).Arriving(SheetFace.Front, 0.0, 0.0).Reflection;
        Vector strips = new Pose(Vector.Zero, roll: angle).Up;
        Complex along = Grid.At(Frequency).Arriving(SheetFace.Front, 0.0, 0.0).Reflection.AlongAlong;

        (Complex y, Complex z) = turned.Of(strips.Y, strips.Z);

        Assert.True((y - (along * strips.Y)).Magnitude < 1e-12);
        Assert.True((z - (along * strips.Z)).Magnitude < 1e-12);
    }

    [Fact]
    public void Two_turns_add_up() =>
        Gen.Select(Arrivals, Gen.Double[-3.0, 3.0], Gen.Double[-3.0, 3.0]).Sample(
            (arrival, first, second) =>
            {
                TangentialMatrix twice = new TurnedSheet(new TurnedSheet(Grid, first), second).At(Frequency).Arriving(SheetFace.Back, arrival.Across, arrival.Along).Transmission;
                TangentialMatrix once = new TurnedSheet(Grid, first + second).At(Frequency).Arriving(SheetFace.Back, arrival.Across, arrival.Along).Transmission;

                Same(once, twice, 1e-9);
            },
            iter: 10);

    [Fact]
    public void It_is_as_thick_as_what_is_turned() => Assert.Equal(Glass.Thickness, new TurnedSheet(Glass, 1.0).Thickness);

    [Fact]
    public void An_angle_that_is_not_finite_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new TurnedSheet(Grid, double.NaN));

    private static void Same(TangentialMatrix expected, TangentialMatrix actual, double tolerance)
    {
        TangentialMatrix difference = expected + (actual * -1.0);
        Assert.True(difference.AcrossAcross.Magnitude < tolerance, $"{difference}");
        Assert.True(difference.AcrossAlong.Magnitude < tolerance, $"{difference}");
        Assert.True(difference.AlongAcross.Magnitude < tolerance, $"{difference}");
        Assert.True(difference.AlongAlong.Magnitude < tolerance, $"{difference}");
    }
}
