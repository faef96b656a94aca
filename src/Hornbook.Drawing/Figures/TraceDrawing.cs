using ScottPlot;
using ScottPlot.Plottables;

namespace Hornbook.Drawing.Figures;

/// <summary>Draws traces into a plot.</summary>
internal static class TraceDrawing
{
    private const double BandOpacity = 0.22;
    private const int FewPoints = 12;

    /// <summary>A line with its band, or points with bars for it; few points are marked, because they are what was computed.</summary>
    internal static void Draw(Plot plot, Trace trace, int index)
    {
        Color colour = FigureStyle.Colour(index);
        if (trace.Low.Count > 0)
        {
            DrawBand(plot, trace, colour);
        }

        Scatter line = plot.Add.ScatterLine(trace.X.ToArray(), trace.Y.ToArray(), colour);
        line.LineWidth = trace.Apart ? 0 : FigureStyle.LineWidth;
        line.LinePattern = FigureStyle.Pattern(index);
        line.LegendText = trace.Label;
        line.MarkerSize = trace.Apart || trace.X.Count <= FewPoints ? 9 : 0;
        line.MarkerShape = MarkerShape.FilledCircle;
        line.MarkerFillColor = colour;
    }

    private static void DrawBand(Plot plot, Trace trace, Color colour)
    {
        if (trace.Apart)
        {
            double[] down = [.. trace.Y.Zip(trace.Low, (y, low) => y - low)];
            double[] up = [.. trace.High.Zip(trace.Y, (high, y) => high - y)];
            ErrorBar bars = new([.. trace.X], [.. trace.Y], null, null, down, up) { Color = colour, LineWidth = FigureStyle.LineWidth };
            plot.PlottableList.Add(bars);
            return;
        }

        FillY band = plot.Add.FillY([.. trace.X], [.. trace.Low], [.. trace.High]);
        band.FillColor = colour.WithAlpha(BandOpacity);
        band.LineWidth = 0;
    }
}
