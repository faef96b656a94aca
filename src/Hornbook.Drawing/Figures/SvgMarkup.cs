using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Hornbook.Drawing.Figures;

/// <summary>Completes a bare SVG drawing: it scales with its frame, is announced by title and description, and may stand beside others in a page.</summary>
internal static partial class SvgMarkup
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    internal static string Finish(byte[] drawing, string title, string description, int width, int height)
    {
        using MemoryStream stream = new(drawing);
        XElement root = XDocument.Load(stream).Root ?? throw new InvalidOperationException("the drawing is empty");
        string identifier = Identifier(title);
        Tidy(root, identifier);
        root.SetAttributeValue("viewBox", string.Create(CultureInfo.InvariantCulture, $"0 0 {width} {height}"));
        root.SetAttributeValue("role", "img");
        root.SetAttributeValue("aria-labelledby", $"{identifier}-title {identifier}-description");
        root.AddFirst(
            new XElement(Svg + "title", new XAttribute("id", $"{identifier}-title"), title),
            new XElement(Svg + "desc", new XAttribute("id", $"{identifier}-description"), description));
        return root.ToString(SaveOptions.DisableFormatting) + "\n";
    }

    // Lists of glyph places end in a comma, which the standard does not allow. Identifiers count on through the life of the
    // program and clash with those of other figures; numbered anew, the same figure is the same text.
    private static void Tidy(XElement root, string identifier)
    {
        Dictionary<string, string> renamed = [];
        string Rename(string old) => renamed.TryGetValue(old, out string? known) ? known : renamed[old] = $"{identifier}-{renamed.Count + 1}";
        foreach (XAttribute attribute in root.DescendantsAndSelf().Attributes())
        {
            attribute.Value = attribute.Name.LocalName switch
            {
                "x" or "y" => attribute.Value.TrimEnd(',', ' '),
                "id" => Rename(attribute.Value),
                "href" when attribute.Value.StartsWith('#') => "#" + Rename(attribute.Value[1..]),
                _ => LocalUrl().Replace(attribute.Value, match => $"url(#{Rename(match.Groups[1].Value)})"),
            };
        }
    }

    private static string Identifier(string title) =>
        "figure-" + string.Concat(title.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));

    [GeneratedRegex(@"url\(#([^)]*)\)")]
    private static partial Regex LocalUrl();
}
