using System.Globalization;
using System.Text;

namespace Hornbook.Bench.Files;

/// <summary>Pieces of a file as a message shows them: short, on one line, nothing unprintable.</summary>
internal static class Shown
{
    private const int Longest = 40;

    /// <summary>A piece of text.</summary>
    internal static string Text(string text)
    {
        StringBuilder shown = new();
        foreach (char one in text.Length > Longest ? text[..Longest] : text)
        {
            shown.Append(IsPlain(one) ? one.ToString() : string.Create(CultureInfo.InvariantCulture, $"\\u{(int)one:X4}"));
        }

        return text.Length > Longest ? shown.Append('…').ToString() : shown.ToString();
    }

    /// <summary>A list of words: "a, b or c".</summary>
    internal static string Words(IReadOnlyList<string> words) => words.Count switch
    {
        0 => "none",
        1 => words[0],
        _ => string.Join(", ", words.Take(words.Count - 1)) + " or " + words[^1],
    };

    private static bool IsPlain(char one) => !char.IsControl(one) && !char.IsSurrogate(one)
        && char.GetUnicodeCategory(one) is not (UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned);
}
