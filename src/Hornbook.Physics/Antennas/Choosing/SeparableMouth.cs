using System.Numerics;
using Hornbook.Physics.Antennas.ClosedForm;
using MathNet.Numerics.Integration;
using MathNet.Numerics.RootFinding;

namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>The far field of a horn's mouth currents as a product of two lines, for when thousands of horns are tried.</summary>
/// <remarks>
/// The currents are those of the exact antenna: E_z = cos(πy/A) e^{−jk(δ_H(y) + δ_E(z))} with spherical delays, H_y = −(β/kη) E_z. Their far intensity
/// is |I_H(k d_y) I_E(k d_z)|² W(d) up to a constant, W = r²(1 − d_z²) + (1 − d_y²) + 2 r d_x, r = β/k, d the direction: Eq. choosing-a-horn (1).
/// </remarks>
internal sealed class SeparableMouth
{
    private const double Step = Math.PI / 720.0;

    // A little more than the general antenna takes, since a line of points costs next to nothing here.
    private const double PointsPerWavelength = 4.0;
    private const int GuardPoints = 10;

    // A spherical wave expansion dies out beyond degree ka; ten more give the rounding level [Hansen1988].
    private const int GuardDegrees = 10;

    private readonly Line _across;
    private readonly Line _up;
    private readonly double _wavenumber;
    private readonly double _ratio;

    internal SeparableMouth(Horn horn, double frequency)
    {
        double wavelength = FreeSpace.Wavelength(horn.Guide.Carried(frequency));
        _wavenumber = 2.0 * Math.PI / wavelength;
        _ratio = Math.Sqrt(1.0 - Math.Pow(wavelength / (2.0 * horn.MouthWidth), 2.0));
        _across = new Line(horn.MouthWidth, horn.AxialRadiusH, wavelength, LineTaper.Cosine);
        _up = new Line(horn.MouthHeight, horn.AxialRadiusE, wavelength, LineTaper.Uniform);
    }

    /// <summary>On the axis, radiated norm [-].</summary>
    internal double Directivity
    {
        get
        {
            double axis = _across.Intensity(0.0) * _up.Intensity(0.0) * (1.0 + _ratio) * (1.0 + _ratio);
            return 4.0 * Math.PI * axis / Radiated();
        }
    }

    internal double? HalfPowerWidthE => Width(angle => Squared(1.0 + (_ratio * Math.Cos(angle))) * _up.Intensity(_wavenumber * Math.Sin(angle)));

    internal double? HalfPowerWidthH => Width(angle => Squared(_ratio + Math.Cos(angle)) * _across.Intensity(_wavenumber * Math.Sin(angle)));

    // The integrand is even in all three components of the direction, so one octant of the sphere is enough; front and back differ only in 2 r d_x.
    private double Radiated()
    {
        int degree = (int)Math.Ceiling(_wavenumber * 0.5 * Math.Sqrt((_across.Size * _across.Size) + (_up.Size * _up.Size))) + GuardDegrees;
        GaussLegendreRule polar = new(-1.0, 1.0, 2 * ((degree / 2) + 1));
        int quarter = (degree / 2) + 1;
        double sum = 0.0;
        for (int i = 0; i < polar.Order; i++)
        {
            double x = polar.Abscissas[i];
            if (x <= 0.0)
            {
                continue;
            }

            double ring = 0.0;
            for (int j = 0; j < quarter; j++)
            {
                (double s, double c) = Math.SinCos(0.5 * Math.PI * (j + 0.5) / quarter);
                ring += Octant(Math.Sqrt(1.0 - (x * x)) * c, Math.Sqrt(1.0 - (x * x)) * s);
            }

            sum += polar.Weights[i] * ring;
        }

        return sum * 4.0 * (0.5 * Math.PI / quarter);
    }

    // Front plus back.
    private double Octant(double y, double z) =>
        2.0 * ((_ratio * _ratio * (1.0 - (z * z))) + (1.0 - (y * y))) * _across.Intensity(_wavenumber * y) * _up.Intensity(_wavenumber * z);

    private static double? Width(Func<double, double> intensity)
    {
        double half = 0.5 * intensity(0.0);
        for (int i = 1; i <= 360; i++)
        {
            if (intensity(i * Step) < half)
            {
                return 2.0 * Brent.FindRoot(angle => intensity(angle) - half, (i - 1) * Step, i * Step, 1e-12, 100);
            }
        }

        return null;
    }

    private static double Squared(double x) => x * x;

    // One side of the mouth: the upper half of its points, since strength and delay are even.
    private sealed class Line
    {
        private readonly double[] _places;
        private readonly Complex[] _strengths;

        internal Line(double size, double radius, double wavelength, LineTaper taper)
        {
            Size = size;
            int half = (int)Math.Ceiling(0.5 * ((PointsPerWavelength * size / wavelength) + GuardPoints));
            GaussLegendreRule rule = new(-0.5 * size, 0.5 * size, 2 * half);
            int[] upper = [.. Enumerable.Range(0, rule.Order).Where(i => rule.Abscissas[i] > 0.0)];
            _places = [.. upper.Select(i => rule.Abscissas[i])];
            _strengths = [.. upper.Select(i => Complex.FromPolarCoordinates(
                rule.Weights[i] * PhasedLine.Strength(taper, 2.0 * rule.Abscissas[i] / size),
                -2.0 * Math.PI / wavelength * MouthCurrents.PathExcess(radius, rule.Abscissas[i])))];
        }

        internal double Size { get; }

        internal double Intensity(double transverse)
        {
            double real = 0.0, imaginary = 0.0;
            for (int i = 0; i < _places.Length; i++)
            {
                double cosine = Math.Cos(transverse * _places[i]);
                real += _strengths[i].Real * cosine;
                imaginary += _strengths[i].Imaginary * cosine;
            }

            return (real * real) + (imaginary * imaginary);
        }
    }
}
