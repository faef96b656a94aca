using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>What is made of a tangential field with components across and along the strips, [-].</summary>
/// <param name="AcrossAcross">Across from across.</param>
/// <param name="AcrossAlong">Across from along.</param>
/// <param name="AlongAcross">Along from across.</param>
/// <param name="AlongAlong">Along from along.</param>
public readonly record struct TangentialMatrix(Complex AcrossAcross, Complex AcrossAlong, Complex AlongAcross, Complex AlongAlong)
{
    /// <summary>Every field stays as it is.</summary>
    public static TangentialMatrix Identity { get; } = new(Complex.One, Complex.Zero, Complex.Zero, Complex.One);

    /// <summary>Sum.</summary>
    public static TangentialMatrix operator +(TangentialMatrix a, TangentialMatrix b) => new(
        a.AcrossAcross + b.AcrossAcross, a.AcrossAlong + b.AcrossAlong, a.AlongAcross + b.AlongAcross, a.AlongAlong + b.AlongAlong);

    /// <summary>One after the other: first b, then a.</summary>
    public static TangentialMatrix operator *(TangentialMatrix a, TangentialMatrix b) => new(
        (a.AcrossAcross * b.AcrossAcross) + (a.AcrossAlong * b.AlongAcross),
        (a.AcrossAcross * b.AcrossAlong) + (a.AcrossAlong * b.AlongAlong),
        (a.AlongAcross * b.AcrossAcross) + (a.AlongAlong * b.AlongAcross),
        (a.AlongAcross * b.AcrossAlong) + (a.AlongAlong * b.AlongAlong));

    /// <summary>Scaled.</summary>
    public static TangentialMatrix operator *(TangentialMatrix a, Complex factor) =>
        new(a.AcrossAcross * factor, a.AcrossAlong * factor, a.AlongAcross * factor, a.AlongAlong * factor);

    /// <summary>One over it; NaN where it has none.</summary>
    public TangentialMatrix Inverse()
    {
        Complex determinant = (AcrossAcross * AlongAlong) - (AcrossAlong * AlongAcross);
        Complex over = Complex.Conjugate(determinant)
            * (1.0 / ((determinant.Real * determinant.Real) + (determinant.Imaginary * determinant.Imaginary)));
        return new TangentialMatrix(AlongAlong * over, -AcrossAlong * over, -AlongAcross * over, AcrossAcross * over);
    }

    /// <summary>The same mirrored at a plane across or along the strips, for a sign of −1; itself for +1.</summary>
    internal TangentialMatrix Mirrored(double sign) => new(AcrossAcross, AcrossAlong * sign, AlongAcross * sign, AlongAlong);

    /// <summary>The same in axes that are turned from across towards along by an angle of this cosine and sine.</summary>
    internal TangentialMatrix Turned(double cosine, double sine)
    {
        (double cc, double cs, double ss) = (cosine * cosine, cosine * sine, sine * sine);
        Complex mixed = (AcrossAlong + AlongAcross) * cs;
        Complex difference = (AlongAlong - AcrossAcross) * cs;
        return new TangentialMatrix(
            (AcrossAcross * cc) + mixed + (AlongAlong * ss),
            (AcrossAlong * cc) - (AlongAcross * ss) + difference,
            (AlongAcross * cc) - (AcrossAlong * ss) + difference,
            (AcrossAcross * ss) - mixed + (AlongAlong * cc));
    }

    /// <summary>A field after it.</summary>
    /// <param name="across">Component across the strips.</param>
    /// <param name="along">Component along the strips.</param>
    public (Complex Across, Complex Along) Of(Complex across, Complex along) =>
        ((AcrossAcross * across) + (AcrossAlong * along), (AlongAcross * across) + (AlongAlong * along));
}
