using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Antennas;

public sealed class NearZoneGainTests
{
    [Theory]
    // Derived (independent integration with exact paths, amplitude spreading kept 1/R): loss against the far gain at R λ/A² = ½… 8.
    [InlineData(1.0108, -1.448, 0.03)]
    [InlineData(2.0217, -0.677, 0.02)]
    [InlineData(8.0867, -0.160, 0.01)]
    public void The_optimum_horn_loses_gain_close_by(double distance, double lossDb, double toleranceDb)
    {
        Antenna antenna = Antenna.At(SampleAntennas.OptimumHorn, 8.75e9);
        Close.Absolute(lossDb, Decibels.FromRatio(NearZoneGain.OnAxis(antenna, distance) / antenna.Gain), toleranceDb);
    }

    [Theory]
    // Derived, closed form of Jull 1970 (1/ρ + 1/R) for A 94, B 76 mm, ρ_E 135, ρ_H 148 mm at 10.525 GHz; 0.1 dB between quadratic and exact.
    [InlineData(0.3, -1.204)]
    [InlineData(0.5, -0.669)]
    [InlineData(1.0, -0.314)]
    [InlineData(2.0, -0.152)]
    [InlineData(5.0, -0.060)]
    public void A_table_horn_loses_what_the_closed_form_says(double distance, double lossDb)
    {
        // The guide whose flares, both 114 mm long, have these two apexes.
        RectangularGuide guide = new(94e-3 * (1 - (114.0 / 148)), 76e-3 * (1 - (114.0 / 135)));
        Antenna antenna = Antenna.At(new Horn(guide, 94e-3, 76e-3, 114e-3, Conductor.Brass), 10.525e9);
        Close.Absolute(lossDb, Decibels.FromRatio(NearZoneGain.OnAxis(antenna, distance) / antenna.Gain), 0.1);
    }

    [Fact]
    public void Far_away_nothing_is_lost()
    {
        Antenna antenna = Antenna.At(SampleAntennas.TableHorn, 10.5e9);
        Close.Relative(antenna.Gain, NearZoneGain.OnAxis(antenna, 2000.0), 1e-3);
    }
}
