using ScottPlot;
using ScottPlot.Plottables;

namespace Hornbook.Drawing.Figures;

/// <summary>Lines against one horizontal axis, in one or more panels under each other.</summary>
public static class LineFigure
{
    private const int PanelHeight = 260;
    private const int SinglePanelHeight = 420;
    private const int Furniture = 80;

    /// <summary>A figure.</summary>
    /// <param name="title">What it shows, in one line.</param>
    /// <param name="description">The same in words.</param>
    /// <param name="x">The horizontal axis.</param>
    /// <param name="panels">From top to bottom; ≥ 1.</param>
    public static Figure Of(string title, string description, HorizontalAxis x, IReadOnlyList<Panel> panels)
    {
        int height = panels.Count == 1 ? SinglePanelHeight + Furniture : (PanelHeight * panels.Count) + Furniture;
        return new Figure(title, description, FigureStyle.Width, height, () => Compose(title, x, panels));
    }

    private static List<Plot> Compose(string title, HorizontalAxis x, IReadOnlyList<Panel> panels)
    {
        (double left, double right) = Extent(panels, x);
        List<Plot> plots = [];
        foreach (Panel panel in panels)
        {
            bool first = plots.Count == 0, last = plots.Count == panels.Count - 1;
            Plot plot = FigureStyle.NewPlot(first ? title : string.Empty, last ? x.Label : string.Empty, panel.YLabel);
            Grey(plot, panel);
            Fill(plot, panel);
            Name(plot, x);
            plot.Axes.SetLimitsX(left, right);
            Bound(plot, panel);
            plot.Legend.Alignment = LegendPlace.Emptiest(plot.Axes.GetLimits(), panel.Traces);
            plots.Add(plot);
        }

        return plots;
    }

    private static (double Left, double Right) Extent(IReadOnlyList<Panel> panels, HorizontalAxis x)
    {
        double left = panels.SelectMany(p => p.Traces).SelectMany(t => t.X).Min();
        double right = panels.SelectMany(p => p.Traces).SelectMany(t => t.X).Max();
        double margin = x.Names.Count > 0 || right <= left ? 0.5 : 0.0;
        return (left - margin, right + margin);
    }

    private static void Name(Plot plot, HorizontalAxis x)
    {
        if (x.Names.Count > 0)
        {
            plot.Axes.Bottom.SetTicks([.. Enumerable.Range(1, x.Names.Count).Select(i => (double)i)], [.. x.Names]);
        }
    }

    private static void Grey(Plot plot, Panel panel)
    {
        bool first = true;
        foreach ((double from, double to) in panel.Greyed)
        {
            HorizontalSpan span = plot.Add.HorizontalSpan(from, to);
            span.FillStyle.Color = Colors.Black.WithAlpha(0.10);
            span.LineStyle.Width = 0;
            span.LegendText = first ? "not to be trusted" : string.Empty;
            first = false;
        }
    }

    private static void Fill(Plot plot, Panel panel)
    {
        for (int i = 0; i < panel.Traces.Count; i++)
        {
            TraceDrawing.Draw(plot, panel.Traces[i], i);
        }

        foreach (Mark level in panel.Levels)
        {
            Style(plot.Add.HorizontalLine(level.Value), level.Label);
        }

        foreach (Mark place in panel.Places)
        {
            Style(plot.Add.VerticalLine(place.Value), place.Label);
        }

        bool named = panel.Traces.Any(t => t.Label.Length > 0) || panel.Levels.Count + panel.Places.Count + panel.Greyed.Count > 0;
        plot.Legend.IsVisible = named;
    }

    private static void Style(AxisLine line, string label)
    {
        line.LegendText = label;
        line.LineWidth = 1.4f;
        line.LinePattern = LinePattern.DenselyDashed;
        line.LineColor = FigureStyle.Grey;
        line.LabelText = string.Empty;
    }

    private static void Bound(Plot plot, Panel panel)
    {
        plot.Axes.AutoScaleY();
        AxisLimits limits = plot.Axes.GetLimits();
        plot.Axes.SetLimitsY(panel.Lowest ?? limits.Bottom, panel.Highest ?? limits.Top);
    }
}
