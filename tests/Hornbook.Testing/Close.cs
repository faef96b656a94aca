using System.Globalization;

namespace Hornbook.Testing;

/// <summary>Whether two numbers agree. Refuses NaN and infinity on either side and prints both numbers and their ratio.</summary>
public static class Close
{
    /// <summary>|actual − expected| ≤ tolerance × |expected|.</summary>
    public static void Relative(double expected, double actual, double tolerance) =>
        Check(expected, actual, Math.Abs(actual - expected) <= tolerance * Math.Abs(expected), $"relative tolerance {Text(tolerance)}");

    /// <summary>|actual − expected| ≤ tolerance.</summary>
    public static void Absolute(double expected, double actual, double tolerance) =>
        Check(expected, actual, Math.Abs(actual - expected) <= tolerance, $"absolute tolerance {Text(tolerance)}");

    private static void Check(double expected, double actual, bool close, string tolerance)
    {
        if (!double.IsFinite(expected) || !double.IsFinite(actual) || !close)
        {
            throw new NotCloseException(
                $"expected {Text(expected)}, got {Text(actual)} (difference {Text(actual - expected)}, ratio {Text(actual / expected)}; {tolerance})");
        }
    }

    private static string Text(double value) => value.ToString("G10", CultureInfo.InvariantCulture);
}

/// <summary>Two numbers do not agree.</summary>
public sealed class NotCloseException(string message) : Exception(message);
