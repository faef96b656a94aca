using ScottPlot;

namespace Hornbook.Drawing.Figures;

/// <summary>Where the legend hides the least.</summary>
internal static class LegendPlace
{
    private static readonly Alignment[] Corners = [Alignment.UpperRight, Alignment.UpperLeft, Alignment.LowerRight, Alignment.LowerLeft];

    /// <summary>The corner whose quarter holds the fewest points; the first of equals.</summary>
    internal static Alignment Emptiest(AxisLimits limits, IReadOnlyList<Trace> traces) =>
        Corners.MinBy(corner => traces.Sum(trace => Points(limits, trace, corner)));

    private static int Points(AxisLimits limits, Trace trace, Alignment corner) =>
        trace.X.Zip(trace.Y).Count(p => IsAt(p.First > limits.HorizontalCenter, p.Second > limits.VerticalCenter, corner));

    private static bool IsAt(bool right, bool upper, Alignment corner) => corner switch
    {
        Alignment.UpperRight => right && upper,
        Alignment.UpperLeft => !right && upper,
        Alignment.LowerRight => right && !upper,
        _ => !right && !upper,
    };
}
