using ScottPlot;
using ScottPlot.Plottables;

namespace Hornbook.Drawing.Figures;

/// <summary>Draws traces into a plot.</summary>
internal static class TraceDrawing
{
    private const double BandOpacity = 0.22;
    private const int FewPoints = 12;

    /// <summary>A line with its band; with few points they are marked, because they are what was computed.</summary>
    internal static void Draw(Plot plot, Trace trace, int index)
    {
        if (trace.Low.Count > 0)
        {
            FillY band = plot.Add.FillY([.. trace.X], [.. trace.Low], [.. trace.High]);
            band.FillColor = FigureStyle.Colour(index).WithAlpha(BandOpacity);
            band.LineWidth = 0;
        }

        Scatter line = plot.Add.ScatterLine(trace.X.ToArray(), trace.Y.ToArray(), FigureStyle.Colour(index));
        line.LineWidth = FigureStyle.LineWidth;
        line.LinePattern = FigureStyle.Pattern(index);
        line.LegendText = trace.Label;
        line.MarkerSize = trace.X.Count <= FewPoints ? 8 : 0;
        line.MarkerShape = MarkerShape.FilledCircle;
    }
}
