using System.Xml.Linq;
using Hornbook.Drawing.Figures;

namespace Hornbook.Drawing.Tests.Figures;

/// <summary>The words of a drawing.</summary>
internal static class SvgTexts
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    internal static string[] Of(Figure figure) =>
        [.. XElement.Parse(figure.ToSvg()).Descendants(Svg + "text").Select(t => t.Value.Trim())];
}
