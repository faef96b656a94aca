using System.Diagnostics.CodeAnalysis;
using System.Text.RegularExpressions;

namespace Hornbook.Tabletop.Benches;

/// <summary>A name for a new bench file that every system takes, and that cannot lead anywhere else.</summary>
public sealed partial record BenchName
{
    private const int Longest = 60;
    private const string Extension = ".toml";

    private BenchName(string stem) => Stem = stem;

    /// <summary>Without the extension.</summary>
    public string Stem { get; }

    public string FileName => Stem + Extension;

    /// <summary>Reads a typed name.</summary>
    /// <param name="text">With or without ".toml".</param>
    /// <param name="name">The name; null where there is something wrong.</param>
    /// <param name="wrong">What; null where nothing is.</param>
    public static bool TryRead(string? text, [NotNullWhen(true)] out BenchName? name, [NotNullWhen(false)] out string? wrong)
    {
        string typed = (text ?? string.Empty).Trim().Normalize();
        string stem = typed.EndsWith(Extension, StringComparison.OrdinalIgnoreCase) ? typed[..^Extension.Length] : typed;
        wrong = stem switch
        {
            "" => "A bench needs a name.",
            { Length: > Longest } => $"The name is too long: {Longest} letters at most.",
            _ when !Plain().IsMatch(stem) => "A name has letters, digits, blanks, - and _, and begins and ends with a letter or digit.",
            _ when Reserved().IsMatch(stem) => $"'{stem}' is a name that some systems keep for devices.",
            _ => null,
        };
        name = wrong is null ? new BenchName(stem) : null;
        return wrong is null;
    }

    [GeneratedRegex(@"^[\p{L}\p{Nd}]([\p{L}\p{M}\p{Nd} _-]*[\p{L}\p{M}\p{Nd}])?\z", RegexOptions.CultureInvariant)]
    private static partial Regex Plain();

    [GeneratedRegex(@"^(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])\z", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Reserved();
}
