using System.Numerics;
using CsCheck;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Sheets;

public sealed class StripGridTests
{
    private const double Frequency = 10.525e9;
    private const double Wavelength = Constants.SpeedOfLight / Frequency;

    private static readonly Gen<StripGrid> FineGrids =
        Gen.Select(Gen.Double[0.05, 0.48], Gen.Double[0.15, 0.85], (period, share) => new StripGrid(period * Wavelength, share * period * Wavelength));

    private static readonly Gen<(double Angle, double Azimuth)> Directions = Gen.Select(Gen.Double[0.0, 1.4], Gen.Double[-Math.PI, Math.PI]);

    [Theory]
    // Marcuvitz, Waveguide Handbook, §§ 5.18 and 5.19 (formulas from memory), and an independent spectral solution of the same ideal
    // grating; millimetres, decibels at 10.525 GHz, field along and across the strips. 0.03 dB as the formulas allow.
    [InlineData(3.0, 1.5, -22.721, -0.0233)]
    [InlineData(5.0, 2.5, -18.260, -0.0653)]
    [InlineData(8.0, 2.0, -6.252, -0.0089)]
    public void It_passes_what_the_handbook_says(double period, double width, double alongDb, double acrossDb)
    {
        TangentialMatrix passed = new StripGrid(period * 1e-3, width * 1e-3).Solved(Frequency).Arriving(SheetFace.Back, 0.0, 0.0).Transmission;
        Close.Absolute(alongDb, LevelDb(passed.AlongAlong), 0.03);
        Close.Absolute(acrossDb, LevelDb(passed.AcrossAcross), 0.001);
    }

    [Theory]
    // The same two sources by period and width in wavelengths, field along the strips; 0.42 and 0.4 wavelengths to 0.03 dB of the spectral solution.
    [InlineData(0.1, 0.5, -23.173)]
    [InlineData(0.3, 0.75, -26.325)]
    [InlineData(0.4, 0.25, -3.936)]
    public void It_depends_on_sizes_in_wavelengths_only(double period, double share, double alongDb)
    {
        foreach (double frequency in new[] { 3e9, 24e9 })
        {
            double p = period * Constants.SpeedOfLight / frequency;
            Close.Absolute(alongDb, LevelDb(new StripGrid(p, share * p).Solved(frequency).Arriving(SheetFace.Back, 0.0, 0.0).Transmission.AlongAlong), 0.005);
        }
    }

    [Fact]
    public void A_very_fine_grid_is_that_of_Lamb()
    {
        // Lamb 1898: X/Z0 = (p/λ) ln csc(πw/2p) for p ≪ λ; with w = p/2 it is (p/λ) ln √2. t = 2jX/(1+2jX).
        double period = 1e-3 * Wavelength;
        double x = 1e-3 * 0.5 * Math.Log(2.0);
        Complex expected = new Complex(0.0, 2.0 * x) / new Complex(1.0, 2.0 * x);
        Complex passed = new StripGrid(period, 0.5 * period).Solved(Frequency).Arriving(SheetFace.Back, 0.0, 0.0).Transmission.AlongAlong;
        Close.Absolute(0.0, (passed - expected).Magnitude / expected.Magnitude, 1e-5);
    }

    [Fact]
    public void Strips_and_gaps_changed_over_pass_what_the_other_stops() => FineGrids.Sample(
        grid =>
        {
            // Babinet 1837, for fields: thin perfect complementary screens.
            StripGrid other = new(grid.Period, grid.Period - grid.StripWidth);
            TangentialMatrix a = grid.Solved(Frequency).Arriving(SheetFace.Back, 0.0, 0.0).Transmission, b = other.Solved(Frequency).Arriving(SheetFace.Back, 0.0, 0.0).Transmission;
            // Computed on a grid of periods and widths: six functions leave most, 1.21e-6, at the widest period and the narrowest strips or gaps.
            Close.Absolute(0.0, (a.AlongAlong + b.AcrossAcross - 1.0).Magnitude, 1.3e-6);
            Close.Absolute(0.0, (a.AcrossAcross + b.AlongAlong - 1.0).Magnitude, 1.3e-6);
        },
        iter: 60);

    [Theory]
    // Babinet again, where strips or gaps are narrow and more functions are taken: 1e-6 is left, as the page on strip grids says.
    [InlineData(0.1)]
    [InlineData(0.05)]
    [InlineData(0.02)]
    [InlineData(0.0101)]
    public void Narrow_strips_and_gaps_are_as_exact(double share)
    {
        foreach (double period in new[] { 0.1 * Wavelength, 0.3 * Wavelength, 0.48 * Wavelength })
        {
            TangentialMatrix narrow = new StripGrid(period, share * period).Solved(Frequency).Arriving(SheetFace.Back, 0.0, 0.0).Transmission;
            TangentialMatrix wide = new StripGrid(period, (1.0 - share) * period).Solved(Frequency).Arriving(SheetFace.Back, 0.0, 0.0).Transmission;
            // Measured: at most 1.0e-6, at the narrowest.
            Close.Absolute(0.0, (narrow.AlongAlong + wide.AcrossAcross - 1.0).Magnitude, 1.3e-6);
            Close.Absolute(0.0, (narrow.AcrossAcross + wide.AlongAlong - 1.0).Magnitude, 1.3e-6);
        }
    }

    [Fact]
    public void Nothing_is_lost_whatever_the_direction_and_the_field() => Gen.Select(FineGrids, Directions, Gen.Double[-Math.PI, Math.PI]).Sample(
        (grid, direction, field) =>
        {
            Assert.True(direction.Angle < grid.OneWaveUpTo(Frequency));
            (double sin, double cos) = Math.SinCos(field);
            (Complex across, Complex along) = (cos, new Complex(0.6 * sin, 0.8 * sin));
            TangentialMatrix reflection = SheetPower.Asked(grid.Solved(Frequency), SheetFace.Back, direction).Reflection;
            double incident = SheetPower.Of(direction, (across, along));
            double thrownBack = SheetPower.Of(direction, reflection.Of(across, along));
            double passed = SheetPower.Of(direction, (TangentialMatrix.Identity + reflection).Of(across, along));
            // Energy.
            Close.Relative(incident, thrownBack + passed, 1e-6);
        },
        iter: 60);

    [Fact]
    public void Turned_by_half_a_turn_it_does_the_same() => Gen.Select(FineGrids, Directions).Sample(
        (grid, direction) =>
        {
            // Symmetry of the grid.
            TangentialMatrix here = SheetPower.Asked(grid.Solved(Frequency), SheetFace.Back, direction).Reflection;
            TangentialMatrix there = SheetPower.Asked(grid.Solved(Frequency), SheetFace.Back, (direction.Angle, direction.Azimuth + Math.PI)).Reflection;
            Close.Absolute(0.0, (here.AlongAlong - there.AlongAlong).Magnitude, 1e-9);
            Close.Absolute(0.0, (here.AcrossAlong - there.AcrossAlong).Magnitude, 1e-9);
        },
        iter: 20);

    [Fact]
    public void In_the_principal_planes_the_two_fields_do_not_mix() => Gen.Select(FineGrids, Gen.Double[0.0, 1.4]).Sample(
        (grid, angle) =>
        {
            ISheetResponse response = grid.Solved(Frequency);
            TangentialMatrix across = response.Arriving(SheetFace.Back, Math.Sin(angle), 0.0).Reflection;
            TangentialMatrix along = response.Arriving(SheetFace.Back, 0.0, Math.Sin(angle)).Reflection;
            // Symmetry: mirrored at the plane of incidence the grid is the same.
            Close.Absolute(0.0, across.AcrossAlong.Magnitude + across.AlongAcross.Magnitude, 1e-9);
            Close.Absolute(0.0, along.AcrossAlong.Magnitude + along.AlongAcross.Magnitude, 1e-9);
        },
        iter: 20);

    [Theory]
    // Rayleigh: a grid of period p scatters as soon as p (1 + sin θ) > λ in the plane across the strips.
    [InlineData(0.99, 0.0, false)]
    [InlineData(1.01, 1e-9, true)]
    [InlineData(0.66, 30.0, false)]
    [InlineData(0.67, 30.0, true)]
    public void It_says_when_a_second_wave_leaves(double periodInWaves, double degrees, bool expected)
    {
        StripGrid grid = new(periodInWaves * Wavelength, 0.5 * periodInWaves * Wavelength);
        double angle = degrees * Math.PI / 180.0;
        Assert.Equal(expected, grid.Scatters(Frequency, Math.Sin(angle), 0.0));
        Assert.Equal(expected, angle > grid.OneWaveUpTo(Frequency));
    }

    [Fact]
    public void Turned_in_its_panel_a_grid_scatters_in_the_turned_plane()
    {
        // Rayleigh: 0.67 wavelengths scatter from 30° in the plane across the strips only.
        StripGrid grid = new(0.67 * Wavelength, 0.3 * Wavelength);
        ISheet turned = new TurnedSheet(grid, 0.5 * Math.PI);
        Assert.True(grid.Scatters(Frequency, 0.5, 0.0) && !grid.Scatters(Frequency, 0.0, 0.5));
        Assert.True(turned.Scatters(Frequency, 0.0, 0.5) && !turned.Scatters(Frequency, 0.5, 0.0));
        // Law: turning does not change the angle.
        Close.Relative(grid.OneWaveUpTo(Frequency), turned.OneWaveUpTo(Frequency), 1e-15);
    }

    [Fact]
    public void A_sheet_without_a_period_never_scatters()
    {
        ISheet metal = new Metal();
        Assert.False(metal.Scatters(Frequency, 0.9, 0.1));
        // Law: up to 90°.
        Close.Relative(0.5 * Math.PI, metal.OneWaveUpTo(Frequency), 1e-15);
    }

    [Theory]
    [InlineData(0.0, 1e-3)]
    [InlineData(5e-3, 5e-3)]
    [InlineData(5e-3, 0.0)]
    [InlineData(double.NaN, 1e-3)]
    public void A_grid_that_is_none_is_refused(double period, double width) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new StripGrid(period, width));

    private static double LevelDb(Complex amplitude) => 2.0 * Decibels.FromRatio(amplitude.Magnitude);
}
