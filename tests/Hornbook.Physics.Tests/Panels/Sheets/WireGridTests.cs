using System.Numerics;
using CsCheck;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Panels.Sheets.Wires;
using Hornbook.Physics.Tests.Panels.Sheets.Wires;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Sheets;

public sealed class WireGridTests
{
    private const double Frequency = 10e9;
    private const double Wavelength = Constants.SpeedOfLight / Frequency;

    private static readonly Gen<(double Angle, double Azimuth)> Directions = Gen.Select(Gen.Double[0.0, 1.5], Gen.Double[-Math.PI, Math.PI]);

    private static readonly Gen<WireGrid> FineGrids =
        Gen.Select(Gen.Double[0.02, 0.5], Gen.Double[0.005, 0.399], (period, share) => new WireGrid(period * Wavelength, share * period * Wavelength));

    [Fact]
    public void Thin_wires_far_closer_than_a_wavelength_are_those_of_Lamb()
    {
        // Lamb 1898; Wait 1955 (from memory): X/Z0 = (p/λ) ln(p/πd) for d ≪ p ≪ λ, t = 2jX/(1 + 2jX). The next terms are (p/λ)³ and (d/p)².
        double x = 2.0 * 1e-3 * Math.Log(200.0 / Math.PI);
        Complex expected = new Complex(0.0, x) / new Complex(1.0, x);
        Complex passed = new WireGrid(1e-3 * Wavelength, 5e-6 * Wavelength).At(Frequency).Arriving(SheetFace.Back, 0.0, 0.0).Transmission.AlongAlong;
        Close.Absolute(0.0, (passed - expected).Magnitude / expected.Magnitude, 1e-4);
    }

    [Theory]
    // Marcuvitz, Waveguide Handbook, § 5.21, inductive posts (from memory): X_a/Z0 = (p/λ) [ln(p/πd) + Σ (1/√(m²−p²/λ²) − 1/m)]; millimetres at 30 mm of wavelength.
    // Derived: a cylinder keeps out a magnetic field across it as a dipole of −2πa²H for each metre, so that in each arm stands −½ (p/λ)(πd/p)².
    [InlineData(10.0, 1.0)]
    [InlineData(5.0, 0.5)]
    [InlineData(10.0, 0.3)]
    public void They_pass_what_the_handbook_says(double periodMm, double diameterMm)
    {
        double p = periodMm / 30.0, share = diameterMm / periodMm;
        double series = Enumerable.Range(1, 2000).Sum(m => (1.0 / Math.Sqrt((m * m) - (p * p))) - (1.0 / m));
        Complex even = new(0.0, 2.0 * p * (Math.Log(1.0 / (Math.PI * share)) + series)), odd = new(0.0, -0.5 * p * Math.PI * Math.PI * share * share);
        Complex expected = 0.5 * (((even - 1.0) / (even + 1.0)) - ((odd - 1.0) / (odd + 1.0)));
        Complex passed = new WireGrid(p * Wavelength, share * p * Wavelength).At(Frequency).Arriving(SheetFace.Back, 0.0, 0.0).Transmission.AlongAlong;
        // Next come (πd/λ)² = 0.01 of either, in the first row.
        Close.Absolute(LevelDb(expected), LevelDb(passed), 0.02);
    }

    [Fact]
    public void The_first_order_formula_is_half_a_decibel_off_where_it_is_often_used()
    {
        // Wait 1955 (from memory): −4.279 dB for 1 mm each 10 mm at 30 mm. That leaves out how far apart and how thick they are; both let more pass.
        Complex passed = new WireGrid(Wavelength / 3.0, Wavelength / 30.0).At(Frequency).Arriving(SheetFace.Back, 0.0, 0.0).Transmission.AlongAlong;
        Assert.InRange(LevelDb(passed) + 4.279, 0.4, 0.55);
    }

    [Fact]
    public void A_thin_wire_is_a_strip_of_twice_its_width() => Gen.Select(Gen.Double[0.05, 0.39], Directions).Sample(
        (period, direction) =>
        {
            double p = period * Wavelength;
            TangentialMatrix wires = SheetPower.Asked(new WireGrid(p, 0.005 * p).Solved(Frequency), SheetFace.Back, direction).Transmission;
            TangentialMatrix strips = SheetPower.Asked(new StripGrid(p, 0.01001 * p).Solved(Frequency), SheetFace.Back, direction).Transmission;
            // Marcuvitz 1951, from memory: equal for the field along them, up to (πd/p)² = 2.5e-4.
            Close.Absolute(0.0, (wires.AlongAlong - strips.AlongAlong).Magnitude, 1e-3);
        },
        iter: 20);

    [Fact]
    public void Nothing_is_lost_whatever_the_direction_and_the_field() => Gen.Select(FineGrids, Directions, Gen.Double[-Math.PI, Math.PI]).Sample(
        (grid, direction, field) =>
        {
            (double sin, double cos) = Math.SinCos(field);
            SheetMatrices sheet = SheetPower.Asked(grid.Solved(Frequency), SheetFace.Back, direction);
            // Energy.
            Close.Absolute(0.0, SheetPower.Kept(sheet, direction, cos, new Complex(0.6 * sin, 0.8 * sin)), 1e-9);
        },
        iter: 200);

    [Fact]
    public void From_behind_it_passes_the_same() => Gen.Select(FineGrids, Directions).Sample(
        (grid, direction) =>
        {
            TangentialMatrix t = SheetPower.Admittance(direction) * SheetPower.Asked(grid.Solved(Frequency), SheetFace.Back, direction).Transmission;
            // Lorentz reciprocity, with the symmetry of the grid.
            Close.Absolute(0.0, (t.AcrossAlong - t.AlongAcross).Magnitude, 1e-9 / Math.Cos(direction.Angle));
        },
        iter: 50);

    [Fact]
    public void Another_formulation_says_the_same() => Gen.Select(Gen.Double[0.2, 0.8], Gen.Double[0.01, 0.399], Directions)
        .Where((period, _, direction) =>
        {
            (double u, double v) = SheetPower.Cosines(direction);
            return SourceBySource.IsClearOfOnset(period, Math.Abs(u), v * v);
        })
        .Sample(
            (period, share, direction) =>
            {
                (double u, double v) = SheetPower.Cosines(direction);
                SheetMatrices sheet = new WireGrid(period * Wavelength, share * period * Wavelength).Solved(Frequency).Arriving(SheetFace.Back, u, v);
                PlainWires plain = new(period, share * period, Math.Abs(u), v);
                (SheetResponse electric, SheetResponse magnetic) = (plain.Of(isMagnetic: false), plain.Of(isMagnetic: true));
                // Independent method: cylinder waves that turn round the wires, their sums done wire by wire; ten of them leave 1e-6 of thick wires.
                Close.Absolute(0.0, (sheet.Reflection.AlongAlong - electric.Reflection).Magnitude, 1e-5);
                Close.Absolute(0.0, (sheet.Transmission.AlongAlong - electric.Transmission).Magnitude, 1e-5);
                Close.Absolute(0.0, (sheet.Reflection.AcrossAcross + magnetic.Reflection).Magnitude, 1e-5);
                Close.Absolute(0.0, (sheet.Transmission.AcrossAcross - magnetic.Transmission).Magnitude, 1e-5);
            },
            iter: 10);

    [Fact]
    public void More_multipoles_change_nothing_that_counts() => Gen.Select(Gen.Double[0.02, 1.0], Gen.Double[0.005, 0.4], Directions).Sample(
        (period, share, direction) => Close.Absolute(
            // Convergence: the page on wire grids.
            0.0, SheetPower.Difference(
                SheetPower.Asked(WireResponse.Direct(new WireEquations(period, share)), SheetFace.Back, direction),
                SheetPower.Asked(WireResponse.Direct(new WireEquations(period, share, 12)), SheetFace.Back, direction)), 1e-9),
        iter: 50);

    [Theory]
    // The page on wire grids: one wave, three and five put back; wires up to the thickest that is tabulated. Up to 88° of the normal.
    [InlineData(0.05, 0.4, 1e-7)]
    [InlineData(0.3, 0.05, 1e-7)]
    [InlineData(0.399, 0.399, 1e-6)]
    [InlineData(0.401, 0.1, 1e-6)]
    [InlineData(0.65, 0.399, 2e-5)]
    [InlineData(0.79, 0.2, 5e-6)]
    [InlineData(1.19, 0.2, 3e-5)]
    public void What_is_read_from_the_table_is_what_the_equations_say(double period, double share, double most)
    {
        WireEquations equations = new(period, share);
        ISheetResponse table = WireResponse.Of(equations), solved = WireResponse.Direct(equations);
        Gen.Select(Gen.Double[0.0, 1.536], Gen.Double[-Math.PI, Math.PI]).Sample(
            (angle, azimuth) =>
                // Independent method: the equations solved for this direction.
                Close.Absolute(
                    0.0, SheetPower.Difference(SheetPower.Asked(solved, SheetFace.Back, (angle, azimuth)), SheetPower.Asked(table, SheetFace.Back, (angle, azimuth))), most),
            iter: 200);
    }

    [Fact]
    public void Asking_a_table_allocates_nothing()
    {
        foreach (double period in new[] { 0.2, 0.6, 1.1 })
        {
            ISheetResponse response = new WireGrid(period * Wavelength, 0.1 * period * Wavelength).At(Frequency);
            response.Arriving(SheetFace.Back, 0.1, 0.2);
            long before = GC.GetAllocatedBytesForCurrentThread();
            for (int i = 0; i < 100; i++)
            {
                response.Arriving(SheetFace.Back, 0.001 * i, 0.2);
            }

            // Law of the contract.
            Assert.Equal(0L, GC.GetAllocatedBytesForCurrentThread() - before);
        }
    }

    [Fact]
    public void A_coarse_grid_loses_what_its_second_beam_takes()
    {
        // Rayleigh: a period of 1.2 wavelengths sends second beams at every angle.
        WireGrid grid = new(1.2 * Wavelength, 0.1 * Wavelength);
        Assert.True(grid.Scatters(Frequency, 0.0, 0.0));
        double kept = SheetPower.Kept(grid.At(Frequency).Arriving(SheetFace.Back, 0.0, 0.0), (0.0, 0.0), 0.0, 1.0);
        Assert.InRange(kept, 0.05, 0.6);
    }

    [Theory]
    [InlineData(0.0, 1e-3)]
    [InlineData(5e-3, 0.0)]
    [InlineData(5e-3, 2.1e-3)]
    [InlineData(double.NaN, 1e-3)]
    public void A_grid_that_is_none_is_refused(double period, double diameter) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new WireGrid(period, diameter));

    private static double LevelDb(Complex amplitude) => 2.0 * Decibels.FromRatio(amplitude.Magnitude);
}
