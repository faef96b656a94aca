using System.Numerics;
using CsCheck;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Exposure;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Tests.Antennas;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Exposure;

public static class ExposureFieldTests
{
    private const double Frequency = 10.525e9;

    private static readonly Antenna TableHorn = Antenna.At(SampleAntennas.TableHorn, Frequency);

    private static readonly ExposureField Field = ExposureField.Of(TableHorn, 10e-3);

    public sealed class Density
    {
        // Independent method: the mouth cut into equal cells, summed with another kernel, its norm from the far intensity it makes.
        [Theory]
        [InlineData(0.0075, 0.0, 0.0)]
        [InlineData(0.010, 0.020, -0.025)]
        [InlineData(0.030, 0.0, 0.045)]
        [InlineData(0.100, 0.0, 0.0)]
        [InlineData(0.530, 0.1, 0.05)]
        public void Agrees_with_equal_cells_and_another_kernel(double x, double y, double z)
        {
            Vector place = new(x, y, z);
            Close.Relative(EqualCells.Density(TableHorn, 10e-3, place), Field.Density(place), 1e-3); // three digits
        }

        [Fact]
        public void Is_that_of_the_gain_far_away() =>
            // [Friis1946]; what the near zone takes falls as 1/R: 12 % at 1 m, 1.2e-5 at 10 km
            Close.Relative(PowerDensity.FarAway(TableHorn, 10e-3, 10e3), Field.Density(new Vector(10e3, 0.0, 0.0)), 2e-5);

        [Fact]
        public void Goes_with_the_power_that_is_not_lost()
        {
            // derived: |Γ| = 0.5 leaves three quarters of it
            Antenna poor = Antenna.At(SampleAntennas.TableHorn with { MeasuredReflection = 0.5 }, Frequency);
            Antenna good = Antenna.At(SampleAntennas.TableHorn with { MeasuredReflection = 0.0 }, Frequency);
            Vector place = new(0.3, 0.02, -0.01);
            Close.Relative(0.75 * PowerDensity.At(good, 20e-3, place), PowerDensity.At(poor, 20e-3, place), 1e-12);
            Close.Relative(2.0 * PowerDensity.At(good, 10e-3, place), PowerDensity.At(good, 20e-3, place), 1e-12);
        }

        [Fact]
        public void Does_not_jump_where_finer_currents_take_over() =>
            // one wavelength from the mouth; the antenna's own currents are good to 1e-5 there
            Close.Relative(
                Field.Density(new Vector(TableHorn.Wavelength * 0.999999, 0.02, 0.03)),
                Field.Density(new Vector(TableHorn.Wavelength * 1.000001, 0.02, 0.03)),
                2e-5);

        [Fact]
        public void Is_the_same_one_by_one_and_in_a_row()
        {
            Vector[] places = [.. Enumerable.Range(1, 100).Select(i => new Vector(0.04 + (0.01 * i), 0.001 * i, 0.0))];
            double[] densities = new double[places.Length];
            Field.Densities(places, densities);
            for (int i = 0; i < places.Length; i++)
            {
                Close.Relative(Field.Density(places[i]), densities[i], 1e-9);
            }
        }
    }

    public sealed class AtMouth
    {
        [Fact]
        public void Times_half_the_area_is_the_power_over_the_phase_constant()
        {
            // derived: TE10 carries P = (β/k)(A B/2)(|E|²/2η)
            double relative = Math.Sqrt(1.0 - Math.Pow(TableHorn.Wavelength / (2.0 * 94e-3), 2.0));
            Close.Relative(Field.RadiatedPower, Field.AtMouth * relative * 94e-3 * 79e-3 / 2.0, 1e-12);
        }

        [Fact]
        public void Of_an_open_end_has_the_reflected_wave_standing_in_it() =>
            SampleAntennas.Frequencies.Sample(
                frequency =>
                {
                    // derived: the wave to the end has E = e and the power (β/k)(a b/4)e²/η; there E = (1 + Γ)e, and 1 − |Γ|² of the power goes on
                    ExposureField field = ExposureField.Of(Antenna.At(SampleAntennas.OpenWr90, frequency), 10e-3);
                    Complex reflection = OpenEndAdmittance.Reflection(SampleAntennas.Wr90, frequency);
                    double standing = Math.Pow((1.0 + reflection).Magnitude, 2.0) / (1.0 - Math.Pow(reflection.Magnitude, 2.0));
                    double travelling = 2.0 * field.RadiatedPower / (22.86e-3 * 10.16e-3 * SampleAntennas.Wr90.RelativePhaseConstant(frequency));
                    Close.Relative(standing * travelling, field.AtMouth, 1e-12);
                    Assert.InRange(standing, 1.05, 1.31); // derived: from 1.30 at 8.2 GHz to 1.07 at 12.4 GHz, by sums of the spectrum in equal steps
                },
                iter: 20);
    }

    public sealed class DistanceFromMouth
    {
        // derived by hand for a mouth of 94 mm × 79 mm
        [Theory]
        [InlineData(0.05, 0.0, 0.0, 0.05)]
        [InlineData(0.0, 0.057, 0.0, 0.010)]
        [InlineData(0.03, 0.087, 0.0, 0.05)]
        [InlineData(-0.04, 0.0, 0.0695, 0.05)]
        public void Is_to_the_nearest_point(double x, double y, double z, double expected) =>
            Close.Absolute(expected, Field.DistanceFromMouth(new Vector(x, y, z)), 1e-12);
    }

    public sealed class DistanceOfCertainty
    {
        [Fact]
        public void Is_never_inside_the_limit() =>
            Gen.Select(SampleAntennas.Horns, Gen.Double[-2.0, 2.0], Gen.Double[-1.0, 1.0], Gen.Double[0.0, 6.28], Gen.Double[1.0, 5.0]).Sample(
                (horn, logDensity, cosine, azimuth, farther) =>
                {
                    ExposureField field = ExposureField.Of(Antenna.At(horn, Frequency), 10e-3);
                    double density = Math.Pow(10.0, logDensity);
                    double sine = Math.Sqrt(1.0 - (cosine * cosine));
                    Vector direction = new(cosine, sine * Math.Cos(azimuth), sine * Math.Sin(azimuth));
                    return field.Density(direction * (farther * field.DistanceOfCertainty(density))) < density;
                },
                iter: 20);
    }

    public sealed class Construction
    {
        [Theory]
        [InlineData(-1e-3)]
        [InlineData(double.NaN)]
        [InlineData(double.PositiveInfinity)]
        public void Rejects_a_power_that_is_negative_or_not_finite(double power) =>
            Assert.Throws<ArgumentOutOfRangeException>("incidentPower", () => ExposureField.Of(TableHorn, power));
    }

    public sealed class Equivalent
    {
        [Fact]
        public void Is_the_flow_of_a_plane_wave()
        {
            // derived: 1 V/m peak is 1/2η W/m²
            ComplexVector e = ComplexVector.Along(new Vector(0.0, 0.0, 1.0), 1.0);
            ComplexVector h = ComplexVector.Along(new Vector(0.0, -1.0, 0.0), 1.0 / Constants.VacuumImpedance);
            Close.Relative(0.5 / Constants.VacuumImpedance, PowerDensity.Equivalent(new FieldSample(e, h)), 1e-14);
        }

        [Fact]
        public void Is_the_larger_of_both_fields_where_nothing_flows()
        {
            // derived: E and H in quadrature, H three times that of a plane wave: 9/2η
            ComplexVector e = ComplexVector.Along(new Vector(0.0, 0.0, 1.0), 1.0);
            ComplexVector h = ComplexVector.Along(new Vector(0.0, -1.0, 0.0), new System.Numerics.Complex(0.0, 3.0 / Constants.VacuumImpedance));
            Close.Relative(4.5 / Constants.VacuumImpedance, PowerDensity.Equivalent(new FieldSample(e, h)), 1e-14);
        }
    }
}
