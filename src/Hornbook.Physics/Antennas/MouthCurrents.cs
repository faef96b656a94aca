using System.Numerics;
using Hornbook.Physics.Radiation;
using MathNet.Numerics.Integration;

namespace Hornbook.Physics.Antennas;

/// <summary>Equivalent currents of a TE10 mouth of one volt per metre, before any normalisation.</summary>
/// <remarks>
/// Own frame: the mouth lies in x = 0, its width along y, its height along z, the wave leaves along +x.
/// E_z = cos(πy/A) e^{−jk δ}, H_y = −(β/kη) E_z, hence J = x̂×H = −ẑ (β/kη) E_z and M = −x̂×E = ŷ E_z (Eq. antennas (1)).
/// β is that of a guide as wide as the mouth, β/k = √(1−(λ/2A)²): at an open end it differs much from one.
/// </remarks>
internal static class MouthCurrents
{
    // Gauss–Legendre points: the error falls exponentially once there are more than two or three points a wavelength of path
    // difference; these leave 1e-7 of the link in front of a mouth and 1e-4 at 60° off it (tests: MouthSamplingTests).
    private const double PointsPerWavelength = 3.0;
    private const int GuardPoints = 4;

    // The current on the rim of an open end, along its two short edges, in units of E0 a/η. Fitted to two facts about WR-90 at
    // 10.5 GHz: a gain of 6.8 to 6.9 dBi (common practice, no source), and a link that a full-wave computation finds 0.8 dB weaker
    // at 30° in the H plane than the bare mouth (this leaves 0.2 dB of it). docs/physics/antennas.md says what was tried instead.
    private static readonly Complex RimStrength = new(0.03, 0.17);

    /// <summary>The currents of a shape; the number of points along each side is multiplied by the refinement.</summary>
    internal static CurrentSamples Of(AntennaShape shape, double frequency, double refinement)
    {
        double wavelength = FreeSpace.Wavelength(frequency);
        GaussLegendreRule across = Rule(shape.MouthWidth, wavelength, refinement);
        GaussLegendreRule up = Rule(shape.MouthHeight, wavelength, refinement);
        Horn? horn = shape as Horn;
        double radiusH = horn?.AxialRadiusH ?? double.PositiveInfinity;
        double radiusE = horn?.AxialRadiusE ?? double.PositiveInfinity;
        Samples samples = new(across.Order * up.Order);
        double k = 2.0 * Math.PI / wavelength;
        double admittance = RelativePhaseConstant(shape.MouthWidth, wavelength) / Constants.VacuumImpedance;
        for (int i = 0; i < across.Order; i++)
        {
            double y = across.Abscissas[i];
            double amplitude = across.Weights[i] * Math.Cos(Math.PI * y / shape.MouthWidth);
            for (int j = 0; j < up.Order; j++)
            {
                double z = up.Abscissas[j];
                double delay = PathExcess(radiusH, y) + PathExcess(radiusE, z);
                Complex field = Complex.FromPolarCoordinates(amplitude, -k * delay) * up.Weights[j];
                samples.Add(new Vector(0.0, y, z), -admittance * field, field);
            }
        }

        if (shape is OpenGuide)
        {
            AddRim(samples, shape.MouthWidth, up);
        }

        return samples.ToCurrents();
    }

    /// <summary>Power that passes through the mouth with these currents [W]: ½Re∫E×H* = (β/k) A B/4η for one volt per metre.</summary>
    internal static double PowerThroughMouth(AntennaShape shape, double frequency) =>
        RelativePhaseConstant(shape.MouthWidth, FreeSpace.Wavelength(frequency))
        * shape.MouthWidth * shape.MouthHeight / (4.0 * Constants.VacuumImpedance);

    /// <summary>Extra path from the apex of a flare to a point off the axis, √(ρ²+x²) − ρ [m], without cancellation; 0 without a flare.</summary>
    internal static double PathExcess(double radius, double offAxis) =>
        double.IsInfinity(radius) ? 0.0 : offAxis * offAxis / (Math.Sqrt((radius * radius) + (offAxis * offAxis)) + radius);

    private static void AddRim(Samples samples, double width, GaussLegendreRule up)
    {
        Complex perLength = -RimStrength * width / Constants.VacuumImpedance;
        for (int j = 0; j < up.Order; j++)
        {
            samples.Add(new Vector(0.0, 0.5 * width, up.Abscissas[j]), perLength * up.Weights[j], Complex.Zero);
            samples.Add(new Vector(0.0, -0.5 * width, up.Abscissas[j]), perLength * up.Weights[j], Complex.Zero);
        }
    }

    private static double RelativePhaseConstant(double width, double wavelength) =>
        Math.Sqrt(1.0 - Math.Pow(wavelength / (2.0 * width), 2.0));

    private static GaussLegendreRule Rule(double size, double wavelength, double refinement)
    {
        int points = (int)Math.Ceiling(refinement * ((PointsPerWavelength * size / wavelength) + GuardPoints));
        return new GaussLegendreRule(-0.5 * size, 0.5 * size, points);
    }

    private sealed class Samples(int capacity)
    {
        private readonly List<Vector> _points = new(capacity);
        private readonly List<ComplexVector> _electric = new(capacity);
        private readonly List<ComplexVector> _magnetic = new(capacity);

        internal void Add(Vector point, Complex electricZ, Complex magneticY)
        {
            _points.Add(point);
            _electric.Add(new ComplexVector(Complex.Zero, Complex.Zero, electricZ));
            _magnetic.Add(new ComplexVector(Complex.Zero, magneticY, Complex.Zero));
        }

        internal CurrentSamples ToCurrents() => new([.. _points], [.. _electric], [.. _magnetic]);
    }
}
