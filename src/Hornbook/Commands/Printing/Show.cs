using System.Globalization;

namespace Hornbook.Commands.Printing;

/// <summary>Numbers as people read them: few digits, a unit, the invariant culture.</summary>
internal static class Show
{
    private const string Nothing = "none";

    // Far below the noise of any bench.
    private const double LowestDb = -200.0;

    private static readonly (double Factor, string Prefix)[] Prefixes =
    [
        (1e9, "G"), (1e6, "M"), (1e3, "k"), (1.0, ""), (1e-3, "m"), (1e-6, "µ"), (1e-9, "n"), (1e-12, "p"), (1e-15, "f"),
    ];

    /// <summary>A level with one decimal; "none" where nothing but rounding errors is left.</summary>
    internal static string Db(double levelDb, string unit = "dB") => levelDb < LowestDb ? Nothing : Fixed(levelDb, 1, unit);

    /// <summary>A correction of a level, where the second decimal matters.</summary>
    internal static string FineDb(double levelDb, string unit = "dB") => Fixed(levelDb, 2, unit);

    /// <summary>An angle given in radians.</summary>
    internal static string Degrees(double angle) => Fixed(angle * 180.0 / Math.PI, 1, "deg");

    /// <summary>The frequency of a wave: all the digits that an oscillator has printed on it.</summary>
    internal static string Gigahertz(double frequency) => (frequency / 1e9).ToString("0.0##", CultureInfo.InvariantCulture) + " GHz";

    /// <summary>The pitch of a tone.</summary>
    internal static string Hertz(double frequency) => Fixed(frequency, frequency < 1000.0 ? 1 : 0, "Hz");

    /// <summary>A length: millimetres below ten centimetres, centimetres below ten metres.</summary>
    internal static string Length(double length) => Math.Abs(length) switch
    {
        < 0.1 => Fixed(length * 1e3, 1, "mm"),
        < 10.0 => Fixed(length * 1e2, 1, "cm"),
        _ => Fixed(length, 1, "m"),
    };

    /// <summary>A size that is cut or measured with a rule.</summary>
    internal static string Millimetres(double length) => Fixed(length * 1e3, 1, "mm");

    /// <summary>Three digits with the prefix that suits: "7.61 µW".</summary>
    internal static string Si(double number, string unit)
    {
        if (!double.IsFinite(number))
        {
            return Nothing;
        }

        double size = Math.Abs(number);
        if (size < 1e-18)
        {
            return $"0 {unit}";
        }

        (double factor, string prefix) = Prefixes.FirstOrDefault(p => size >= 0.9995 * p.Factor, Prefixes[^1]);
        double scaled = number / factor;
        int decimals = Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Abs(scaled)) + 2e-4), 0, 2);
        return Fixed(scaled, decimals, prefix + unit);
    }

    /// <summary>A number with decimals and a unit; "none" where it is not finite.</summary>
    internal static string Fixed(double number, int decimals, string unit = "")
    {
        if (!double.IsFinite(number))
        {
            return Nothing;
        }

        string text = number.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        bool isZero = text.All(c => c is '-' or '0' or '.');
        return $"{(isZero ? text.TrimStart('-') : text)} {unit}".TrimEnd();
    }
}
