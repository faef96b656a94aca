using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Sheets;

public sealed class SheetAngleTests
{
    private const double Frequency = 10.525e9;

    [Theory]
    // Our own choice of angles.
    [InlineData(0.0)]
    [InlineData(0.5)]
    [InlineData(1.2)]
    public void Of_plastic_it_is_what_the_sheet_itself_says_whichever_way_it_is_tilted(double angle)
    {
        LayeredSheet sheet = new(new Layer(Dielectrics.Find("acrylic glass")!, 5e-3));
        foreach (bool alongStrips in new[] { false, true })
        {
            SheetAngle found = SheetAngle.Of(sheet, Frequency, angle, alongStrips);
            // A sheet's table is within 1e-6 of the amplitude.
            Close.Absolute(sheet.At(Frequency, angle, Polarisation.Across).Passed, found.Beside.Passed, 3e-6);
            Close.Absolute(sheet.At(Frequency, angle, Polarisation.Within).Reflected, found.Within.Reflected, 3e-6);
            Assert.False(found.Scatters);
        }
    }

    [Fact]
    public void Strips_stop_the_field_along_them_in_either_plane()
    {
        StripGrid grid = new(3e-3, 1.5e-3);
        // 30°, our own choice.
        SheetAngle tiltedAcross = SheetAngle.Of(grid, Frequency, Math.PI / 6.0), tiltedAlong = SheetAngle.Of(grid, Frequency, Math.PI / 6.0, alongStrips: true);
        Assert.True(tiltedAcross.Beside.Passed < 0.02 && tiltedAcross.Within.Passed > 0.9);
        Assert.True(tiltedAlong.Within.Passed < 0.02 && tiltedAlong.Beside.Passed > 0.9);
    }

    [Fact]
    public void A_coarse_grid_scatters_beyond_where_it_says()
    {
        // derived: a period of 0.6 λ has one wave up to sin θ = 1/0.6 − 1, 41.8°.
        StripGrid grid = new(0.6 * Constants.SpeedOfLight / Frequency, 3e-3);
        Assert.False(SheetAngle.Of(grid, Frequency, 0.72).Scatters);
        Assert.True(SheetAngle.Of(grid, Frequency, 0.74).Scatters);
    }
}
