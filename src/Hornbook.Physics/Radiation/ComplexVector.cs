using System.Numerics;
using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Radiation;

/// <summary>A vector phasor, peak amplitude, e^{+jωt}.</summary>
/// <param name="X">Component along x.</param>
/// <param name="Y">Component along y.</param>
/// <param name="Z">Component along z.</param>
public readonly record struct ComplexVector(Complex X, Complex Y, Complex Z)
{
    /// <summary>|v|² = |X|²+|Y|²+|Z|².</summary>
    public double SquaredMagnitude => Square(X) + Square(Y) + Square(Z);

    /// <summary>A real direction times a complex amplitude.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ComplexVector Along(Vector direction, Complex amplitude) =>
        new(Times(amplitude, direction.X), Times(amplitude, direction.Y), Times(amplitude, direction.Z));

    /// <summary>Sum of products without conjugation, a·b.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Complex Dot(ComplexVector a, ComplexVector b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    /// <summary>Time-mean power density ½ Re(E × H*) [W/m²] of two phasors.</summary>
    public static Vector PowerDensity(ComplexVector e, ComplexVector h) => new(
        0.5 * ((e.Y * Complex.Conjugate(h.Z)) - (e.Z * Complex.Conjugate(h.Y))).Real,
        0.5 * ((e.Z * Complex.Conjugate(h.X)) - (e.X * Complex.Conjugate(h.Z))).Real,
        0.5 * ((e.X * Complex.Conjugate(h.Y)) - (e.Y * Complex.Conjugate(h.X))).Real);

    /// <summary>Vector product of a real direction and a phasor, d × v.</summary>
    public static ComplexVector Cross(Vector d, ComplexVector v) =>
        new((d.Y * v.Z) - (d.Z * v.Y), (d.Z * v.X) - (d.X * v.Z), (d.X * v.Y) - (d.Y * v.X));

    /// <summary>The component along a real direction.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Complex Component(Vector direction) => Times(X, direction.X) + Times(Y, direction.Y) + Times(Z, direction.Z);

    /// <summary>Own-frame components expressed in the bench frame.</summary>
    public ComplexVector Rotated(Pose pose) => Frame.Of(pose).Turn(this);

    /// <summary>Sum.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ComplexVector operator +(ComplexVector a, ComplexVector b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Scaled.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ComplexVector operator *(ComplexVector a, Complex factor) => new(a.X * factor, a.Y * factor, a.Z * factor);

    /// <summary>Scaled by a real number.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ComplexVector operator *(ComplexVector a, double factor) => new(Times(a.X, factor), Times(a.Y, factor), Times(a.Z, factor));

    // The library's product of a complex and a real number is a call of its own, and these are made for every cell of every panel.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Complex Times(Complex a, double factor) => new(a.Real * factor, a.Imaginary * factor);

    private static double Square(Complex c) => (c.Real * c.Real) + (c.Imaginary * c.Imaginary);
}
