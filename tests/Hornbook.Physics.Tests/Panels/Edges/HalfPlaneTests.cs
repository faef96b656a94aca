using System.Numerics;
using CsCheck;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Edges;

public static class HalfPlaneTests
{
    private const double Degree = Math.PI / 180.0;

    private static double Db(Complex ratio) => 2.0 * Decibels.FromRatio(ratio.Magnitude);

    public sealed class Reference
    {
        private const double Wavenumber = 220.0;

        [Fact]
        public void Obeys_the_wave_equation_also_across_the_edge_of_the_shadow() =>
            Gen.Select(Gen.Double[0.1, 6.1], Gen.Double[0.05, 0.4], Gen.Double[-0.1, 0.1], Gen.Bool.Select(electric => electric ? -1.0 : 1.0)).Sample(
                (angle, distance, z, sign) =>
                {
                    HalfPlane plane = new(Wavenumber, new Vector(0.05, 0.3, 0.0));
                    Vector p = new(distance * Math.Cos(angle), distance * Math.Sin(angle), z);
                    // Helmholtz: the six neighbours of a point at h add up to (6 − k²h²) times the point, to the order (kh)⁴/12 = 1e-5 of it and its neighbours.
                    double h = 0.1 / Wavenumber;
                    Complex sum = 0.0;
                    foreach (Vector step in new Vector[] { new(h, 0, 0), new(0, h, 0), new(0, 0, h) })
                    {
                        sum += plane.Scalar(p + step, sign) + plane.Scalar(p - step, sign);
                    }

                    double scale = plane.FreeScalar((p - plane.Source).Length).Magnitude * 0.01;
                    Close.Absolute(0.0, (sum - ((6.0 - 0.01) * plane.Scalar(p, sign))).Magnitude / scale, 5e-3);
                },
                iter: 50);

        [Fact]
        public void Is_source_and_image_far_out_on_the_lit_side()
        {
            // Geometrical optics; what the rim adds there, (8πk)^-½ in a distance's root, is some per cent.
            HalfPlane plane = new(Wavenumber, new Vector(0.5, 0.1, 0.0));
            Vector p = new(0.6, 0.2, 0.0);
            Complex expected = plane.FreeScalar((p - plane.Source).Length) - plane.FreeScalar((p - new Vector(0.5, -0.1, 0.0)).Length);
            Close.Absolute(0.0, (plane.Scalar(p, -1.0) - expected).Magnitude / expected.Magnitude, 0.01);
        }

        [Fact]
        public void Is_the_same_with_source_and_receiver_changed_over()
        {
            // Reciprocity.
            Vector a = new(0.05, 0.3, 0.0), b = new(0.1, -0.2, 0.04);
            Complex there = new HalfPlane(Wavenumber, a).Scalar(b, 1.0), back = new HalfPlane(Wavenumber, b).Scalar(a, 1.0);
            Close.Absolute(0.0, (there - back).Magnitude / there.Magnitude, 1e-9);
        }
    }

    public sealed class Level
    {
        private static readonly double[] IntoShadow = [-60 * Degree, -40 * Degree, -20 * Degree, -10 * Degree, 0.0, 10 * Degree, 20 * Degree, 30 * Degree, 40 * Degree];
        private static readonly double[] DeepShadow = [50 * Degree, 60 * Degree];

        // Exact: Macdonald's integral. Errors as docs/physics/edges.md tells them, at 6 cells a wavelength.
        [Theory]
        [InlineData(90.0, true, 0.06, 0.4)]
        [InlineData(90.0, false, 0.06, 0.4)]
        [InlineData(50.0, true, 0.25, 0.5)]
        [InlineData(50.0, false, 0.15, 0.3)]
        public void Is_that_of_the_exact_solution_with_the_fringe_current(double sourceDegrees, bool isElectric, double toleranceDb, double deepDb)
        {
            HalfPlaneBench bench = new(sourceDegrees * Degree, isElectric, 6.0);
            Agrees(bench, IntoShadow, toleranceDb);
            Agrees(bench, DeepShadow, deepDb);
        }

        [Theory]
        // Physical optics alone: stronger than the truth behind a rim along E, weaker across it.
        [InlineData(true, 1.96)]
        [InlineData(false, -1.85)]
        public void Is_off_without_it(bool isElectric, double errorDb)
        {
            HalfPlaneBench bench = new(90 * Degree, isElectric, 6.0);
            double[] angle = [20 * Degree];
            Close.Absolute(errorDb, Db(bench.Ratios(angle, withFringe: false)[0] / bench.ExactRatios(angle)[0]), 0.05);
        }

        [Fact]
        public void Is_that_of_a_knife_edge_in_the_mean_of_both_polarisations()
        {
            double[] angles = [.. Enumerable.Range(-20, 21).Select(i => i * Degree)];
            Complex[] along = new HalfPlaneBench(90 * Degree, true, 6.0).Ratios(angles, withFringe: true);
            Complex[] across = new HalfPlaneBench(90 * Degree, false, 6.0).Ratios(angles, withFringe: true);
            double[] power = [.. along.Zip(across, (a, b) => Math.Pow((0.5 * (a + b)).Magnitude, 2.0))];
            // Born and Wolf, Principles of Optics, 7th ed. 1999, § 8.7 and 11.5 (from memory): a quarter of the power at the edge of the shadow, −6.02 dB;
            Close.Absolute(-6.02, Decibels.FromRatio(power[^1]), 0.02);
            // 1.37 at the first maximum. 0.05 dB: degrees are steps.
            Close.Absolute(Decibels.FromRatio(1.37), Decibels.FromRatio(power.Max()), 0.05);
        }

        private static void Agrees(HalfPlaneBench bench, double[] angles, double toleranceDb)
        {
            Complex[] exact = bench.ExactRatios(angles), found = bench.Ratios(angles, withFringe: true);
            for (int i = 0; i < angles.Length; i++)
            {
                Close.Absolute(Db(exact[i]), Db(found[i]), toleranceDb);
            }
        }
    }
}
