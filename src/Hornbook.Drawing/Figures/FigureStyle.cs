using System.Globalization;
using Hornbook.Drawing.Lettering;
using ScottPlot;
using ScottPlot.TickGenerators;

namespace Hornbook.Drawing.Figures;

/// <summary>What all figures have in common: lettering, colours and line patterns.</summary>
/// <remarks>
/// Colours are those of Okabe and Ito, "Color universal design" (2008), which people with any common kind of colour vision
/// tell apart. Lines differ in pattern as well, so nothing is said by colour alone and a black-and-white print still works.
/// </remarks>
internal static class FigureStyle
{
    internal const int Width = 800;
    internal const float LineWidth = 2.2f;

    private const float LeftEdge = 76f;
    private const float RightEdge = 24f;
    private const float TitleSize = 17f;
    private const float LabelSize = 14f;
    private const float TickSize = 13f;

    private static readonly Color[] Palette =
    [
        Color.FromHex("#0072B2"), // blue
        Color.FromHex("#D55E00"), // vermillion
        Color.FromHex("#009E73"), // bluish green
        Color.FromHex("#000000"), // black
        Color.FromHex("#CC79A7"), // reddish purple
        Color.FromHex("#E69F00"), // orange
    ];

    private static readonly LinePattern[] Patterns =
    [
        LinePattern.Solid,
        LinePattern.Dashed,
        LinePattern.Dotted,
        LinePattern.DenselyDashed,
    ];

    internal static Color Grey { get; } = Color.FromHex("#767676");

    internal static Color Colour(int index) => Palette[index % Palette.Length];

    internal static LinePattern Pattern(int index) => Patterns[index % Patterns.Length];

    /// <summary>An empty plot; every figure begins here.</summary>
    internal static Plot NewPlot(string title, string xLabel, string yLabel)
    {
        EmbeddedFont.Ensure();
        Plot plot = new();
        plot.FigureBackground.Color = Colors.White;
        plot.Font.Set(EmbeddedFont.Name);
        Letter(plot.Axes.Title.Label, title, TitleSize);
        Letter(plot.Axes.Bottom.Label, xLabel, LabelSize);
        Letter(plot.Axes.Left.Label, yLabel, LabelSize);
        plot.Axes.Bottom.TickLabelStyle.FontSize = TickSize;
        plot.Axes.Left.TickLabelStyle.FontSize = TickSize;
        plot.Axes.Bottom.TickGenerator = new NumericAutomatic { LabelFormatter = PlainNumber };
        plot.Axes.Left.TickGenerator = new NumericAutomatic { LabelFormatter = PlainNumber };
        plot.Axes.Left.MinimumSize = plot.Axes.Left.MaximumSize = LeftEdge;
        plot.Axes.Right.MinimumSize = RightEdge;
        plot.Grid.MajorLineColor = Color.FromHex("#DDDDDD");
        plot.Legend.FontSize = TickSize;
        plot.Legend.SymbolWidth = 36;
        plot.Legend.FontName = EmbeddedFont.Name;
        plot.Legend.ShadowColor = Colors.Transparent;
        plot.Legend.BackgroundColor = Colors.White.WithAlpha(0.85);
        return plot;
    }

    // No thousands sign: a reader must not take "1,200" for one and a fifth.
    private static string PlainNumber(double number) =>
        Math.Round(number, 9).ToString("0.#########", CultureInfo.InvariantCulture);

    private static void Letter(LabelStyle label, string text, float size)
    {
        label.Text = text;
        label.FontName = EmbeddedFont.Name;
        label.FontSize = size;
        label.Bold = false;
        label.ForeColor = Colors.Black;
    }
}
