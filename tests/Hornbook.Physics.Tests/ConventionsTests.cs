using System.Numerics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests;

/// <summary>One test or more for each line of docs/conventions.md, by its number.</summary>
public sealed class ConventionsTests
{
    private const double Wavelength = 0.03;

    private const double Wavenumber = 2.0 * Math.PI / Wavelength;

    // A current moment of 1 A m along z, at the origin.
    private static readonly CurrentSamples Dipole = new([Vector.Zero], [ComplexVector.Along(new Vector(0, 0, 1), 1.0)], [default]);

    // A small horn on WR-90 at 10.525 GHz, of our own invention.
    private static readonly Antenna Example = Antenna.At(
        new Horn(new RectangularGuide(22.86e-3, 10.16e-3), 0.09, 0.07, 0.1, Conductor.Brass) { MeasuredReflection = 0.2 }, 10.525e9);

    [Fact]
    public void C1_a_quarter_wave_further_out_the_phase_is_a_quarter_turn_more_negative()
    {
        // derived: e^{−jkr}; what is left of the near zone at 100 λ turns it by less than 1/(kr)² ≈ 2.5e-6.
        Complex near = FieldAt(new Vector(100.0 * Wavelength, 0, 0)).Electric.Z;
        Complex far = FieldAt(new Vector(100.25 * Wavelength, 0, 0)).Electric.Z;
        Close.Absolute(-Math.PI / 2.0, (far / near).Phase, 1e-5);
    }

    [Fact]
    public void C1_charge_lags_the_current_that_brings_it_by_a_quarter_turn()
    {
        // derived: q = I/jω under e^{+jωt}; beyond the end of a short dipole E is that of its charges, −90° from the current,
        // up to (kr)² = 1e-6 of it.
        Complex field = FieldAt(new Vector(0, 0, 1e-3 / Wavenumber)).Electric.Z;
        Close.Absolute(-Math.PI / 2.0, field.Phase, 1e-5);
    }

    [Fact]
    public void C2_the_frame_is_right_handed() =>
        Assert.Equal(new Vector(0, 0, 1), Vector.Cross(new Vector(1, 0, 0), new Vector(0, 1, 0)));

    [Fact]
    public void C2_a_current_upwards_turns_its_magnetic_field_to_the_left_in_front_of_it()
    {
        // derived: Biot and Savart, H = I dl × R̂ / 4πr²; z × x = y. Up to (kr)² = 1e-6 of it.
        double r = 1e-3 / Wavenumber;
        Complex field = FieldAt(new Vector(r, 0, 0)).Magnetic.Y;
        Close.Relative(1.0 / (4.0 * Math.PI * r * r), field.Real, 1e-5);
    }

    [Fact]
    public void C3_at_rest_a_thing_looks_along_x_and_is_upright()
    {
        Pose rest = new(Vector.Zero);
        Assert.Equal(new Vector(1, 0, 0), rest.Forward);
        Assert.Equal(new Vector(0, 1, 0), rest.Left);
        Assert.Equal(new Vector(0, 0, 1), rest.Up);
    }

    [Fact]
    public void C3_the_field_of_an_antenna_at_rest_is_upright_and_goes_forward()
    {
        FieldSample[] ahead = new FieldSample[1];
        RadiatedField.Evaluate(Example.Currents, Example.Wavenumber, [new Vector(1.0, 0, 0)], ahead);
        Assert.True(ahead[0].PowerDensity.X > 0.0);

        // derived: the mouth is symmetrical about both planes, so that nothing is left across but rounding.
        Close.Relative(ahead[0].Electric.SquaredMagnitude, Math.Pow(ahead[0].Electric.Z.Magnitude, 2.0), 1e-12);
    }

    [Fact]
    public void C3_the_e_plane_is_upright()
    {
        // derived: an open guide is twice as wide (own y) as it is high (own z), so its beam is wider in the E plane, own x-z.
        Antenna end = Antenna.At(new OpenGuide(new RectangularGuide(22.86e-3, 10.16e-3), Conductor.Brass), 10.525e9);
        double up = end.DirectivityTowards(new Vector(0.5, 0, Math.Sqrt(0.75)));
        double left = end.DirectivityTowards(new Vector(0.5, Math.Sqrt(0.75), 0));
        Assert.True(up > 1.5 * left);
    }

    [Fact]
    public void C4_a_positive_turn_looks_to_the_left() =>
        Close.Absolute(1.0, new Pose(Vector.Zero, turn: Math.PI / 2).Forward.Y, 1e-15);

    [Fact]
    public void C4_a_positive_tilt_looks_up() =>
        Close.Absolute(1.0, new Pose(Vector.Zero, tilt: Math.PI / 2).Forward.Z, 1e-15);

    [Fact]
    public void C4_a_positive_roll_is_right_handed_about_the_axis()
    {
        // Right-handed about +x takes +z to −y.
        Pose rolled = new(Vector.Zero, roll: Math.PI / 2);
        Close.Absolute(-1.0, rolled.Up.Y, 1e-15);
        Close.Absolute(1.0, rolled.Left.Z, 1e-15);
    }

    [Fact]
    public void C4_roll_comes_first_then_tilt_then_turn()
    {
        // derived: own z, rolled by 90° to −y, is not moved by the tilt, and is turned by 90° about z to +x.
        Vector up = new Pose(Vector.Zero, turn: Math.PI / 2, tilt: 0.3, roll: Math.PI / 2).Up;
        Close.Absolute(1.0, up.X, 1e-15);
    }

    [Fact]
    public void C5_power_density_is_half_of_that_of_the_peaks()
    {
        // derived: a plane wave of 1 V/m peak along z that goes along x has H = −y/η, and carries 1/2η.
        FieldSample wave = new(
            ComplexVector.Along(new Vector(0, 0, 1), 1.0), ComplexVector.Along(new Vector(0, -1, 0), 1.0 / Constants.VacuumImpedance));
        Close.Relative(0.5 / Constants.VacuumImpedance, wave.PowerDensity.X, 1e-15);
    }

    [Fact]
    public void C5_a_short_dipole_of_peak_current_radiates_its_textbook_power()
    {
        // [Balanis2016] ch. 4, the infinitesimal dipole: P = η (π/3) |I l/λ|², I the peak.
        double expected = Constants.VacuumImpedance * Math.PI / 3.0 / (Wavelength * Wavelength);
        Close.Relative(expected, FarField.RadiatedPower(Dipole, Wavenumber), 1e-12);
    }

    [Fact]
    public void C6_an_antenna_stands_where_the_centre_of_its_mouth_is()
    {
        Pose pose = new(new Vector(0.3, -0.1, 0.2), turn: 0.4, tilt: -0.2, roll: 1.0);
        Vector sum = Vector.Zero;
        foreach (Vector point in Example.Currents.Posed(pose).Points)
        {
            Close.Absolute(0.0, pose.ToOwn(point).X, 1e-15);
            sum += point;
        }

        // derived: the points of the rule are symmetrical about the centre.
        Close.Absolute(0.0, ((sum * (1.0 / Example.Currents.Count)) - pose.Position).Length, 1e-14);
    }

    [Fact]
    public void C7_metres_go_in_and_hertz_come_out()
    {
        // EIA RS-261-B: WR-90 is 0.9 in wide; derived: c/2a = 6.5571 GHz to the digits printed in handbooks.
        Close.Absolute(6.5571e9, new RectangularGuide(0.9 * 0.0254, 0.4 * 0.0254).CutoffFrequency, 0.00005e9);
    }

    [Fact]
    public void C7_levels_are_of_powers_and_over_a_milliwatt()
    {
        Close.Relative(20.0, Decibels.FromRatio(100.0), 1e-15);
        Close.Relative(10.0, Decibels.PowerToDbm(0.01), 1e-15);
        Close.Relative(0.01, Decibels.DbmToPower(10.0), 1e-15);
    }

    [Fact]
    public void C8_currents_are_for_one_watt_radiated_and_directivity_is_over_it()
    {
        // derived: power and intensity integrated here by a plain midpoint rule in θ and φ about z, not by the library's own.
        const int Steps = 240;
        double power = 0.0;
        for (int i = 0; i < Steps; i++)
        {
            double theta = Math.PI * (i + 0.5) / Steps;
            for (int j = 0; j < Steps; j++)
            {
                double phi = 2.0 * Math.PI * j / Steps;
                Vector direction = new(Math.Sin(theta) * Math.Cos(phi), Math.Sin(theta) * Math.Sin(phi), Math.Cos(theta));
                power += FarField.Intensity(Example.Currents, Example.Wavenumber, direction) * Math.Sin(theta);
            }
        }

        // The midpoint rule errs by about (π/240)²/24 = 7e-6.
        Close.Relative(1.0, power * Math.PI / Steps * 2.0 * Math.PI / Steps, 2e-5);
        Close.Relative(4.0 * Math.PI * FarField.Intensity(Example.Currents, Example.Wavenumber, new Vector(1, 0, 0)), Example.Directivity, 1e-12);
    }

    [Fact]
    public void C9_gain_has_the_loss_in_the_walls_and_not_the_reflection()
    {
        Assert.True(Example.OhmicEfficiency < 1.0);
        Close.Relative(Example.Directivity * Example.OhmicEfficiency, Example.Gain, 1e-15);

        // derived: |Γ| = 0.2 leaves 1 − 0.04.
        Close.Relative(0.96, Example.MismatchEfficiency, 1e-15);
        Close.Relative(0.96 * Example.Gain, Example.RealisedGain, 1e-15);
    }

    private static FieldSample FieldAt(Vector place)
    {
        FieldSample[] field = new FieldSample[1];
        RadiatedField.Evaluate(Dipole, Wavenumber, [place], field);
        return field[0];
    }
}
