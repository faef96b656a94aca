using ScottPlot;
using SkiaSharp;

namespace Hornbook.Drawing.Lettering;

/// <summary>DejaVu Sans from this assembly, so that a figure looks the same on a machine without any font.</summary>
/// <remarks>Without a resolver of its own the plotting library writes no text at all where the system has no fonts, and says nothing.</remarks>
internal sealed class EmbeddedFont : IFontResolver
{
    /// <summary>The name that figures ask for.</summary>
    internal const string Name = "DejaVu Sans";

    private static readonly SKTypeface Typeface = Load();
    private static readonly Lazy<bool> Installed = new(Install);

    /// <inheritdoc/>
    public SKTypeface? CreateTypeface(string fontName, FontWeight weight, FontSlant slant, FontSpacing spacing) => Typeface;

    /// <inheritdoc/>
    public SKTypeface? CreateTypeface(string fontName, bool bold, bool italic) => Typeface;

    /// <summary>Makes it the only font; must precede the first plot, repeating it does no harm.</summary>
    internal static bool Ensure() => Installed.Value;

    private static bool Install()
    {
        Fonts.FontResolvers.Clear();
        Fonts.FontResolvers.Add(new EmbeddedFont());
        Fonts.Default = Name;
        return true;
    }

    private static SKTypeface Load()
    {
        using Stream stream = typeof(EmbeddedFont).Assembly.GetManifestResourceStream("DejaVuSans.ttf")
            ?? throw new InvalidOperationException("DejaVuSans.ttf is not in the assembly");
        using SKData data = SKData.Create(stream);
        return SKTypeface.FromData(data);
    }
}
