using System.Numerics;
using CsCheck;
using Hornbook.Physics.Panels.Edges;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Edges;

public static class FringeCurrentTests
{
    private const double Wavenumber = 220.0;
    internal const double Wavelength = 2.0 * Math.PI / Wavenumber;
    private static readonly RimFoot Foot = new(Vector.Zero, new Vector(1.0, 0.0, 0.0), new Vector(0.0, 1.0, 0.0), 1.0);

    private static readonly Gen<Complex> Amplitude =
        Gen.Select(Gen.Double[-1.0, 1.0], Gen.Double[-1.0, 1.0], (re, im) => new Complex(re, im)).Where(c => c.Magnitude > 0.1);

    internal static readonly Gen<PlaneWave> Waves = Gen.Select(Gen.Double[0.3, 2.8], Gen.Double[0.6, 2.5], Amplitude, Amplitude)
        .Select(w => new PlaneWave(w.Item1, w.Item2, w.Item3, w.Item4));

    internal static FringeCurrent Fringe(PlaneWave wave) => new(EdgeWave.Of(wave.Field, Foot, SheetFace.Front, Wavenumber));

    /// <summary>2 n×H at a distance from the rim.</summary>
    private static ComplexVector Optics(PlaneWave wave, double distance) =>
        ComplexVector.Cross(Foot.Normal, wave.Field.Magnetic) * Complex.FromPolarCoordinates(2.0, -Wavenumber * wave.Direction.X * distance);

    public sealed class At
    {
        [Fact]
        public void Stops_the_current_across_the_rim_at_the_rim() => Waves.Sample(wave =>
        {
            // Meixner's edge condition: the current across vanishes as √x, which is 1e-5 of it here.
            Complex total = Fringe(wave).At(1e-12).X + Optics(wave, 1e-12).X;
            Close.Absolute(0.0, total.Magnitude / Math.Sqrt(wave.Field.Magnetic.SquaredMagnitude), 1e-4);
        });

        [Fact]
        public void Leaves_no_current_of_a_wave_that_meets_the_rim_edge_on() => Gen.Select(Amplitude, Gen.Double[0.01, 5.0]).Sample((electric, waves) =>
        {
            // Such a wave with its electric field across the sheet is not disturbed by it: H_z = −E_y/η of one that travels along x.
            FieldSample field = new(new ComplexVector(0.0, electric, 0.0), new ComplexVector(0.0, 0.0, electric / Constants.VacuumImpedance));
            double distance = waves * Wavelength;
            Complex fringe = new FringeCurrent(EdgeWave.Of(field, Foot, SheetFace.Front, Wavenumber)).At(distance).X;
            Complex optics = field.Magnetic.Z * Complex.FromPolarCoordinates(2.0, -Wavenumber * distance);
            Close.Absolute(0.0, ((fringe + optics) / optics).Magnitude, 1e-7);
        });

        [Fact]
        public void Radiates_what_the_exact_solution_sends_into_every_direction() => Gen.Select(Waves, Gen.Double[0.6, 5.6])
            .Where((wave, azimuth) => Math.Abs(Math.Cos(0.5 * (azimuth - wave.Arrival))) > 0.2 && Math.Abs(Math.Cos(0.5 * (azimuth + wave.Arrival))) > 0.2)
            .Sample(
                (wave, azimuth) =>
                {
                    (Complex electric, Complex magnetic) = EdgeRadiation.Of(wave, Wavenumber, azimuth, Fringe(wave).At);
                    (Complex electricExact, Complex magneticExact) = EdgeRadiation.Exact(wave, Wavenumber, azimuth);
                    double scale = electricExact.Magnitude + (Constants.VacuumImpedance * magneticExact.Magnitude);
                    // The smooth end of the quadrature leaves so much.
                    Close.Absolute(0.0, (electric - electricExact).Magnitude / scale, 3e-4);
                    Close.Absolute(0.0, Constants.VacuumImpedance * (magnetic - magneticExact).Magnitude / scale, 3e-4);
                },
                iter: 40);
    }
}
