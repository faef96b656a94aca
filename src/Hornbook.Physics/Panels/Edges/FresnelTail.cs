using System.Numerics;
using System.Runtime.CompilerServices;
using Hornbook.Physics.Radiation;
using MathNet.Numerics;
using MathNet.Numerics.Integration;

namespace Hornbook.Physics.Panels.Edges;

/// <summary>The complementary Fresnel integral without its oscillation, g(v) = e^{jv²} erfc(e^{jπ/4} v), v ≥ 0.</summary>
/// <remarks>
/// Math.NET has erfc for real arguments only. In t = (v−2)/(v+2) the function is smooth from v = 0, where it is 1, to v → ∞, where it falls
/// as e^{−jπ/4}/(√π v). A polynomial in t through Chebyshev's nodes is worked out once from the integral and is then within 1e-8 of it
/// everywhere: it is asked for millions of times. Eq. edges (2). Source: [AbramowitzStegun1964] chapter 7.
/// </remarks>
internal static class FresnelTail
{
    private const int Nodes = 20;
    private const double Middle = 2.0;

    // The integrand below has fallen to 1e-17 there, and is smooth on the way.
    private const double IntegrationEnd = 30.0;
    private const int IntegrationPoints = 128;

    private static readonly Complex Ray = Complex.FromPolarCoordinates(1.0, 0.25 * Math.PI);
    private static readonly double[] RealCoefficients = Coefficients(g => g.Real);
    private static readonly double[] ImaginaryCoefficients = Coefficients(g => g.Imaginary);

    /// <summary>g(v), within 1e-8.</summary>
    /// <param name="v">Argument [-]; ≥ 0.</param>
    internal static Complex At(double v)
    {
        double t = (v - Middle) / (v + Middle);
        double re = RealCoefficients[Nodes - 1], im = ImaginaryCoefficients[Nodes - 1];
        for (int i = Nodes - 2; i >= 0; i--)
        {
            re = Math.FusedMultiplyAdd(re, t, RealCoefficients[i]);
            im = Math.FusedMultiplyAdd(im, t, ImaginaryCoefficients[i]);
        }

        return new Complex(re, im);
    }

    /// <summary>The same in every lane.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (T Real, T Imaginary) At<T>(T v)
        where T : unmanaged, ILanes<T>
    {
        T t = (v - T.All(Middle)) / (v + T.All(Middle));
        ReadOnlySpan<double> real = RealCoefficients, imaginary = ImaginaryCoefficients;
        T re = T.All(real[Nodes - 1]), im = T.All(imaginary[Nodes - 1]);
        for (int i = Nodes - 2; i >= 0; i--)
        {
            re = T.MultiplyAdd(re, t, T.All(real[i]));
            im = T.MultiplyAdd(im, t, T.All(imaginary[i]));
        }

        return (re, im);
    }

    /// <summary>g(v) = (2/√π) ∫₀^∞ exp(−τ² − 2 e^{jπ/4} v τ) dτ by quadrature, with τ = s/(1+v).</summary>
    internal static Complex ByIntegration(double v)
    {
        double scale = 1.0 / (1.0 + v);
        Complex integral = GaussLegendreRule.ContourIntegrate(
            s => Complex.Exp(-(s * scale * s * scale) - (2.0 * Ray * (v * scale * s))), 0.0, IntegrationEnd, IntegrationPoints);
        return integral * (2.0 * scale / Math.Sqrt(Math.PI));
    }

    private static double[] Coefficients(Func<Complex, double> part)
    {
        double[] nodes = [.. Enumerable.Range(0, Nodes).Select(i => Math.Cos(Math.PI * (i + 0.5) / Nodes))];
        double[] values = Array.ConvertAll(nodes, t => part(ByIntegration(Middle * (1.0 + t) / (1.0 - t))));
        return Fit.Polynomial(nodes, values, Nodes - 1);
    }
}
