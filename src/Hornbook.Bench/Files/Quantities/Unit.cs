namespace Hornbook.Bench.Files.Quantities;

/// <summary>A unit as it is written in text.</summary>
/// <param name="Symbol">The spelling that messages and saved files use.</param>
/// <param name="Factor">One of it in the SI unit of its quantity [SI unit]; for levels the reference of 0 dB.</param>
/// <param name="Scale">How a number in it turns into the SI value.</param>
/// <param name="AlsoWritten">Other spellings that are read.</param>
public sealed record Unit(string Symbol, double Factor, UnitScale Scale = UnitScale.Linear, params IReadOnlyList<string> AlsoWritten)
{
    /// <summary>The absolute temperature of 0 °C [K]; exact (SI).</summary>
    private const double IcePoint = 273.15;

    /// <summary>A number in this unit, in SI.</summary>
    public double ToSi(double number) => Scale switch
    {
        UnitScale.PowerLevel => Factor * Math.Pow(10.0, number / 10.0),
        UnitScale.AmplitudeLevel => Factor * Math.Pow(10.0, number / 20.0),
        UnitScale.Celsius => number + IcePoint,
        UnitScale.Divided => number / Factor,
        _ => number * Factor,
    };

    /// <summary>An SI value as a number in this unit.</summary>
    public double FromSi(double value) => Scale switch
    {
        UnitScale.PowerLevel => 10.0 * Math.Log10(value / Factor),
        UnitScale.AmplitudeLevel => 20.0 * Math.Log10(value / Factor),
        UnitScale.Celsius => value - IcePoint,
        UnitScale.Divided => value * Factor,
        _ => value / Factor,
    };

    /// <summary>Whether a text is one of its spellings, letter by letter.</summary>
    public bool IsWritten(string text) =>
        string.Equals(text, Symbol, StringComparison.Ordinal) || AlsoWritten.Contains(text, StringComparer.Ordinal);
}
