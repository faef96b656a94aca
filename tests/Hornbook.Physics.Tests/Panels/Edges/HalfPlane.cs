using System.Numerics;
using MathNet.Numerics;
using MathNet.Numerics.Integration;

namespace Hornbook.Physics.Tests.Panels.Edges;

/// <summary>The exact field of a point source beside a half plane of metal: y = 0, x &gt; 0, its rim along z.</summary>
/// <remarks>
/// Macdonald 1915 as in Bowman, Senior and Uslenghi 1969, chapter 8 (from memory; the tests check the wave equation and the free space far from the shadow):
/// source and image each give −(jk/4π) ∫ from −m to ∞ of H1⁽²⁾(kR + µ²)/√(µ² + 2kR) dµ, m = ±√(k(R1 − R)), R1 the way by the rim. A dipole along the rim
/// needs one such scalar, its Hertz vector: e^{−jkR}/4πR without the plane.
/// </remarks>
internal sealed record HalfPlane(double Wavenumber, Vector Source)
{
    private static readonly Complex Ray = Complex.FromPolarCoordinates(1.0, -0.25 * Math.PI);

    /// <summary>The component along the rim of an electric (−1) or magnetic (+1) unit dipole along the rim: (k² + ∂²/∂z²) G.</summary>
    public Complex Along(Vector point, double imageSign) => Differentiated(point, p => Scalar(p, imageSign));

    /// <summary>The same without the plane.</summary>
    public Complex Free(Vector point) => Differentiated(point, p => FreeScalar((p - Source).Length));

    /// <summary>G with the plane, 0 on it for −1, of no slope there for +1.</summary>
    public Complex Scalar(Vector point, double imageSign)
    {
        double rho = double.Hypot(point.X, point.Y), rho0 = double.Hypot(Source.X, Source.Y);
        double phi = Angle(point), phi0 = Angle(Source);
        double z = point.Z - Source.Z;
        return Part(rho, rho0, z, phi - phi0) + (imageSign * Part(rho, rho0, z, phi + phi0));
    }

    /// <summary>G in free space.</summary>
    public Complex FreeScalar(double distance) => Complex.Exp(new Complex(0.0, -Wavenumber * distance)) / (4.0 * Math.PI * distance);

    private static double Angle(Vector v)
    {
        double a = Math.Atan2(v.Y, v.X);
        return a < 0.0 ? a + (2.0 * Math.PI) : a;
    }

    private Complex Part(double rho, double rho0, double z, double angle)
    {
        double distance = Math.Sqrt((rho * rho) + (rho0 * rho0) + (z * z) - (2.0 * rho * rho0 * Math.Cos(angle)));
        double longest = Math.Sqrt(((rho + rho0) * (rho + rho0)) + (z * z));
        double m = 2.0 * Math.Sqrt(Wavenumber * rho * rho0 / (longest + distance)) * Math.Cos(0.5 * angle);
        Complex tail = Tail(Wavenumber * distance, Math.Abs(m)) * new Complex(0.0, -Wavenumber / (4.0 * Math.PI));
        return m > 0.0 ? FreeScalar(distance) - tail : tail;
    }

    // ∫ from m to ∞, on a path turned by −45° where the Hankel function falls as e^{−t²}.
    private static Complex Tail(double kr, double m) => Ray * GaussLegendreRule.ContourIntegrate(
        t =>
        {
            Complex mu = m + (Ray * t);
            Complex square = mu * mu;
            return SpecialFunctions.HankelH2(1.0, kr + square) / Complex.Sqrt(square + (2.0 * kr));
        },
        0.0, 6.5, 64);

    // Fourth-order differences; the step leaves (k h)⁴/90 ≈ 1e-6.
    private Complex Differentiated(Vector p, Func<Vector, Complex> scalar)
    {
        double h = 0.1 / Wavenumber;
        Complex At(double dz) => scalar(p with { Z = p.Z + dz });
        Complex second = ((16.0 * (At(h) + At(-h))) - (At(2.0 * h) + At(-2.0 * h)) - (30.0 * At(0.0))) / (12.0 * h * h);
        return (Wavenumber * Wavenumber * At(0.0)) + second;
    }
}
