using System.Globalization;
using System.Runtime.CompilerServices;

namespace Hornbook.Physics;

/// <summary>Checks at the public door; inside, values are trusted.</summary>
internal static class Require
{
    /// <summary>Passes a finite value that is greater than zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is NaN, infinite, zero or negative.</exception>
    internal static double Positive(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value) && value > 0.0 ? value : throw Refused(name, value, "must be finite and > 0");

    /// <summary>Passes a finite value that is not negative.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is NaN, infinite or negative.</exception>
    internal static double NotNegative(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value) && value >= 0.0 ? value : throw Refused(name, value, "must be finite and >= 0");

    /// <summary>Passes a finite value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is NaN or infinite.</exception>
    internal static double Finite(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value) ? value : throw Refused(name, value, "must be finite");

    /// <summary>Passes a value with lowest ≤ value ≤ highest.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is NaN or outside.</exception>
    internal static double Within(double value, double lowest, double highest, [CallerArgumentExpression(nameof(value))] string name = "") =>
        value >= lowest && value <= highest
            ? value
            : throw Refused(name, value, string.Create(CultureInfo.InvariantCulture, $"must be from {lowest} to {highest}"));

    private static ArgumentOutOfRangeException Refused(string name, double value, string legal) =>
        new(name, value, string.Create(CultureInfo.InvariantCulture, $"{name} = {value}; {legal}"));
}
