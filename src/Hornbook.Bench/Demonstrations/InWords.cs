using System.Globalization;
using Hornbook.Physics.Detection;

namespace Hornbook.Bench.Demonstrations;

/// <summary>Numbers as they stand in a sentence: rounded to what matters, with their unit.</summary>
internal static class InWords
{
    /// <summary>A tone: "1230 Hz (D♯6)", and whether it is clipped or lost.</summary>
    internal static string Tone(HeardTone heard) => heard.State switch
    {
        ToneState.Drowned => $"the resting tone of {Frequency(heard.Tone)} (lost in the noise)",
        ToneState.Clipped => $"{Frequency(heard.Tone)} ({Physics.Detection.Note.Nearest(heard.Tone).Name}, clipped)",
        _ => Note(heard.Tone),
    };

    /// <summary>A tone with the note that musicians would call it: "1230 Hz (D♯6)".</summary>
    internal static string Note(double tone) => $"{Frequency(tone)} ({Physics.Detection.Note.Nearest(tone).Name})";

    /// <summary>A frequency of sound or waves.</summary>
    internal static string Frequency(double hertz) => Math.Abs(hertz) switch
    {
        >= 1e9 => $"{Rounded(hertz / 1e9, 5)} GHz",
        >= 1e6 => $"{Rounded(hertz / 1e6, 4)} MHz",
        >= 1e4 => $"{Rounded(hertz / 1e3, 3)} kHz",
        _ => $"{Rounded(hertz, 3)} Hz",
    };

    /// <summary>A length from millimetres to metres.</summary>
    internal static string Length(double metres) => Math.Abs(metres) switch
    {
        >= 0.9995 => $"{Rounded(metres, 3)} m",
        >= 0.01 => $"{Rounded(100.0 * metres, 3)} cm",
        < 1e-9 => "0 cm",
        _ => $"{Rounded(1000.0 * metres, 2)} mm",
    };

    /// <summary>An angle in degrees.</summary>
    internal static string Angle(double radians) => $"{Fixed(radians * 180.0 / Math.PI, 1)}°";

    /// <summary>A quantity in words as it is typed into a bench file: with the keyboard's minus, and degrees by name.</summary>
    internal static string Typed(string inWords) => inWords.Replace('−', '-').Replace("°", " deg", StringComparison.Ordinal);

    /// <summary>A difference of levels.</summary>
    internal static string Decibels(double levelDb) => $"{Fixed(levelDb, 1)} dB";

    /// <summary>A power from nanowatts to watts.</summary>
    internal static string Power(double watts) => Math.Abs(watts) switch
    {
        >= 0.9995 => $"{Rounded(watts, 3)} W",
        >= 0.9995e-3 => $"{Rounded(1e3 * watts, 3)} mW",
        >= 0.9995e-6 => $"{Rounded(1e6 * watts, 3)} µW",
        _ => $"{Rounded(1e9 * watts, 3)} nW",
    };

    /// <summary>How many steps of pitch a listener can just tell apart: two digits are already generous.</summary>
    internal static string Steps(double steps) => $"about {Rounded(steps, 2)} just-noticeable steps";

    /// <summary>A place along a curve: "62 cm", "−30°", "'big horn'".</summary>
    internal static string Place(Abscissa abscissa, Setting setting) => abscissa.Unit switch
    {
        "deg" => Angle(setting.At),
        "cm" or "mm" => Length(setting.At),
        _ => $"'{setting.Label}'",
    };

    /// <summary>Parts of a curve: "from −30° to −12° and at 4°", "with 'a' and 'b'".</summary>
    internal static string Places(Abscissa abscissa, IReadOnlyList<Stretch> stretches) =>
        Joined([.. stretches.Select(s => Place(abscissa, s))]);

    /// <summary>"a", "a and b", "a, b and c".</summary>
    internal static string Joined(IReadOnlyList<string> parts) => parts.Count < 2
        ? string.Concat(parts)
        : $"{string.Join(", ", parts.Take(parts.Count - 1))} and {parts[^1]}";

    /// <summary>A number to so many significant digits, without exponent: 1234.5 to three is "1230".</summary>
    internal static string Rounded(double number, int digits)
    {
        if (number == 0.0)
        {
            return "0";
        }

        int places = digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(number)));
        double unit = Math.Pow(10.0, -places);
        return places > 0 ? Fixed(number, Math.Min(places, 15)) : Fixed(Math.Round(number / unit) * unit, 0);
    }

    /// <summary>A positive number cut down to two digits: an upper bound that is still one when it is typed.</summary>
    internal static double TwoDigitsDown(double number)
    {
        double unit = number > 0.0 ? Math.Pow(10.0, Math.Floor(Math.Log10(number)) - 1.0) : 1.0;
        return Math.Floor(number / unit) * unit;
    }

    private static string Place(Abscissa abscissa, Stretch stretch) => (abscissa.Unit.Length == 0, stretch.First == stretch.Last) switch
    {
        (true, true) => $"with {Place(abscissa, stretch.First)}",
        (true, false) => $"from {Place(abscissa, stretch.First)} to {Place(abscissa, stretch.Last)}",
        (false, true) => $"at {Place(abscissa, stretch.First)}",
        (false, false) => $"from {Place(abscissa, stretch.First)} to {Place(abscissa, stretch.Last)}",
    };

    private static string Fixed(double number, int places)
    {
        string text = Math.Round(number, places).ToString($"0.{new string('#', places)}", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text.Replace('-', '−');
    }
}
