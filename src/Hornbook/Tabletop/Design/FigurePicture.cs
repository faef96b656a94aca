using System.Text;
using Hornbook.Drawing.Figures;

namespace Hornbook.Tabletop.Design;

/// <summary>A figure as the page shows it: drawn once, beside the page.</summary>
/// <param name="Source">Address of the picture, with the picture itself in it.</param>
/// <param name="Title">What it shows, in one line.</param>
/// <param name="Description">The same in words.</param>
public sealed record FigurePicture(string Source, string Title, string Description)
{
    public static FigurePicture Of(Figure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        string coded = Convert.ToBase64String(Encoding.UTF8.GetBytes(figure.ToSvg()));
        return new FigurePicture($"data:image/svg+xml;base64,{coded}", figure.Title, figure.Description);
    }
}
