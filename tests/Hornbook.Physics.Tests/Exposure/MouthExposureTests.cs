using Hornbook.Physics.Antennas;
using Hornbook.Physics.Exposure;
using Hornbook.Physics.Tests.Antennas;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Exposure;

public static class MouthExposureTests
{
    private const double Frequency = 10.525e9;

    private static readonly ExposureField Horn = ExposureField.Of(Antenna.At(SampleAntennas.TableHorn, Frequency), 10e-3);

    private static readonly ExposureField Open = ExposureField.Of(Antenna.At(SampleAntennas.OpenWr90, Frequency), 10e-3);

    public sealed class Peak
    {
        [Fact]
        public void Is_the_density_at_its_place()
        {
            MouthExposure mouth = MouthExposure.Of(Horn);
            Close.Relative(Horn.Density(mouth.PeakPlace), mouth.Peak, 1e-12);
        }

        // Independent search: a grid of 2 to 3 mm through the box in front of one quarter of the mouth.
        [Fact]
        public void Is_not_missed_by_the_grid()
        {
            double largest = 0.0;
            for (double x = Horn.ClosestDistance; x < Horn.Antenna.Wavelength; x += 2e-3)
            {
                for (double y = 0.0; y <= 0.05; y += 3e-3)
                {
                    for (double z = 0.0; z <= 0.05; z += 3e-3)
                    {
                        largest = Math.Max(largest, Horn.Density(new Vector(x, y, z)));
                    }
                }
            }

            Assert.InRange(MouthExposure.Of(Horn).Peak, largest * 0.98, largest * 1.01);
        }

        [Fact]
        public void Stays_below_the_textbook_estimate()
        {
            // [Oet65]: no place should exceed 4P/A
            Assert.InRange(MouthExposure.Of(Horn).Peak, 0.25 * MouthExposure.Of(Horn).SurfaceEstimate, MouthExposure.Of(Horn).SurfaceEstimate);
            Assert.InRange(MouthExposure.Of(Open).Peak, 0.25 * MouthExposure.Of(Open).SurfaceEstimate, MouthExposure.Of(Open).SurfaceEstimate);
        }
    }

    public sealed class Average
    {
        [Fact]
        public void Is_below_the_peak() => Assert.InRange(MouthExposure.Of(Horn).Average, 0.5 * MouthExposure.Of(Horn).Peak, MouthExposure.Of(Horn).Peak);

        [Fact]
        public void Of_an_open_guide_is_nearly_all_its_power_over_the_square()
        {
            // derived: the mouth (2.3 cm²) is smaller than the square of 4 cm²: at most P/(4 cm² g), and 98 % of cos² lies within 20 mm;
            // g = β/k of the guide over the 1.189 by which the reflected wave raises |E|² (sums of the spectrum in equal steps)
            double relative = Math.Sqrt(1.0 - Math.Pow(Open.Antenna.Wavelength / (2.0 * 22.86e-3), 2.0));
            double whole = 1.189 * Open.RadiatedPower / (4e-4 * relative);
            Assert.InRange(MouthExposure.Of(Open).Average, 0.97 * whole, whole);
        }
    }

    public sealed class SurfaceEstimate
    {
        [Fact]
        public void Is_four_times_power_over_area() =>
            Close.Relative(4.0 * Horn.RadiatedPower / (94e-3 * 79e-3), MouthExposure.Of(Horn).SurfaceEstimate, 1e-14); // [Oet65] from memory
    }

    [Fact]
    public static void Everything_goes_with_the_power()
    {
        MouthExposure one = MouthExposure.Of(Horn);
        MouthExposure two = MouthExposure.Of(ExposureField.Of(Horn.Antenna, 20e-3));
        Close.Relative(2.0 * one.Peak, two.Peak, 1e-12);
        Close.Relative(2.0 * one.Average, two.Average, 1e-12);
    }
}
