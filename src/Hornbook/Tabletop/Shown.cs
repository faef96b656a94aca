using System.Globalization;
using Hornbook.Physics.Detection;

namespace Hornbook.Tabletop;

/// <summary>A quantity as the page shows it; the one place where the page chooses units and digits.</summary>
/// <param name="Number">Digits, with a true minus sign.</param>
/// <param name="Unit">Its unit.</param>
public readonly record struct Shown(string Number, string Unit)
{
    private const double DegreesPerRadian = 180.0 / Math.PI;

    public override string ToString() => Unit == "°" ? Number + Unit : $"{Number} {Unit}";

    /// <summary>A tone [Hz].</summary>
    public static Shown Tone(double frequency) => new(Text(frequency, frequency < 100.0 ? "0.0" : "0"), "Hz");

    /// <summary>An oscillator's frequency [Hz].</summary>
    public static Shown Microwave(double frequency) => new(Text(frequency / 1e9, "0.000"), "GHz");

    /// <summary>A voltage [V].</summary>
    public static Shown Voltage(double volts) => Math.Abs(volts) switch
    {
        0.0 => new("0", "V"),
        >= 0.1 => new(Text(volts, "0.00"), "V"),
        >= 1e-4 => new(Text(volts * 1e3, "0.00"), "mV"),
        _ => new(Text(volts * 1e6, "0.0"), "µV"),
    };

    /// <summary>A level [dB].</summary>
    public static Shown Level(double levelDb) => new(Text(levelDb, "0.0"), "dB");

    /// <summary>A power [dBm].</summary>
    public static Shown PowerLevel(double levelDbm) => new(Text(levelDbm, "0.0"), "dBm");

    /// <summary>A power [W].</summary>
    public static Shown Power(double watts) => Math.Abs(watts) switch
    {
        >= 1.0 => new(Text(watts, "0.0"), "W"),
        >= 1e-3 => new(Text(watts * 1e3, "0.0"), "mW"),
        _ => new(Text(watts * 1e6, "0.0"), "µW"),
    };

    /// <summary>A power density [W/m²].</summary>
    public static Shown Density(double density) => new(Text(density, density switch { >= 100.0 => "0", >= 10.0 => "0.#", >= 1.0 => "0.##", _ => "0.###" }), "W/m²");

    /// <summary>A length on the bench [m].</summary>
    public static Shown Length(double metres, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return new(Text(metres / unit.Metres, unit == LengthUnit.Centimetre ? "0.0" : "0.00"), unit.Sign);
    }

    /// <summary>A size that is cut or measured with a rule [m].</summary>
    public static Shown Size(double metres) => new(Text(metres * 1e3, "0.0#"), "mm");

    /// <summary>A share as a percentage [-].</summary>
    public static Shown Share(double share) => new(Text(100.0 * share, share < 0.0095 ? "0.0#" : "0"), "%");

    /// <summary>A level in hundredths, for losses and what errors change [dB].</summary>
    public static Shown FineLevel(double levelDb) => new(Text(levelDb, "0.00"), "dB");

    /// <summary>A change, with its sign: "+0.12" or "−0.10".</summary>
    public static string Change(double change)
    {
        string text = Text(change, "0.00");
        return change > 0.0 && text != "0.00" ? $"+{text}" : text;
    }

    /// <summary>A distance to keep [m]: whole centimetres or inches, rounded up.</summary>
    public static Shown Clearance(double metres, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return new(Text(Math.Ceiling((metres / unit.Metres) - 1e-6), "0"), unit.Sign);
    }

    /// <summary>A length in wavelengths [-].</summary>
    public static Shown Wavelengths(double count) => new(Text(count, "0.00"), "λ");

    /// <summary>A gain over an isotropic antenna [dB].</summary>
    public static Shown Gain(double gainDbi) => new(Text(gainDbi, "0.0"), "dBi");

    /// <summary>The same in hundredths, where errors of building are told [dB].</summary>
    public static Shown FineGain(double gainDbi) => new(Text(gainDbi, "0.00"), "dBi");

    /// <summary>An angle [rad].</summary>
    public static Shown Angle(double radians) => new(Text(radians * DegreesPerRadian, "0.#"), "°");

    /// <summary>The nearest note and how far the tone is off it [Hz]: "A4" and "+12 cents".</summary>
    public static Shown NearestNote(double frequency)
    {
        Note note = Note.Nearest(frequency);
        string sign = note.Cents >= 0.5 ? "+" : string.Empty;
        return new(note.Name.Replace('#', '\u266F'), $"{sign}{Text(note.Cents, "0")} cents");
    }

    private static string Text(double number, string format)
    {
        if (!double.IsFinite(number))
        {
            return number < 0.0 ? "\u2212∞" : "–";
        }

        string digits = number.ToString(format, CultureInfo.InvariantCulture);
        bool rounded = digits.AsSpan().IndexOfAnyInRange('1', '9') < 0; // to nothing, which has no sign
        return rounded ? digits.TrimStart('-') : digits.Replace('-', '\u2212');
    }
}
