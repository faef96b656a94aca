using System.Globalization;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Exposure;
using ScottPlot;
using ScottPlot.Plottables;

namespace Hornbook.Drawing.Figures;

/// <summary>The table from above, both axes to the same scale, with the line inside which nobody stays.</summary>
public static class KeepOutFigure
{
    private const int Height = 560;
    private const int Directions = 360;
    private const double CentimetresPerMetre = 100.0;

    /// <summary>The figure.</summary>
    /// <param name="plan">The bench.</param>
    /// <param name="field">The field of its source at the worst-case power.</param>
    /// <param name="limit">The limit whose line is drawn.</param>
    public static Figure Of(BenchPlan plan, ExposureField field, ExposureLimit limit)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(field);
        ArgumentNullException.ThrowIfNull(limit);
        Coordinates[] line = Line(plan.Source.Pose, field, limit.PowerDensity(plan.Frequency));
        string title = $"{plan.Title} from above: keep out";
        string description = string.Create(
            CultureInfo.InvariantCulture,
            $"Nobody stays inside the line around the source. It is drawn at the source's height for {limit.Title}, {limit.PowerDensity(plan.Frequency):0.###} watts per square metre.");
        return new Figure(title, description, FigureStyle.Width, Height, () => [Compose(title, plan, limit, line)]);
    }

    // The outermost place at each direction of the plan, at the height of the source.
    private static Coordinates[] Line(Pose source, ExposureField field, double density)
    {
        Coordinates[] line = new Coordinates[Directions];
        Parallel.For(0, Directions, i =>
        {
            double angle = 2.0 * Math.PI * i / Directions;
            Vector direction = new(Math.Cos(angle), Math.Sin(angle), 0.0);
            Vector own = source.ToOwn(source.Position + direction);
            line[i] = OnPlan(source.Position + (direction * KeepOut.Towards(field, density, own)));
        });
        return line;
    }

    private static Plot Compose(string title, BenchPlan plan, ExposureLimit limit, Coordinates[] line)
    {
        Plot plot = FigureStyle.NewPlot(title, "along the table [cm]", "across [cm]");
        double halfWidth = 0.5 * plan.Table.Width * CentimetresPerMetre;
        Rectangle table = plot.Add.Rectangle(0.0, plan.Table.Length * CentimetresPerMetre, -halfWidth, halfWidth);
        table.FillColor = Colors.Black.WithAlpha(0.06);
        table.LineColor = FigureStyle.Grey;
        table.LegendText = "table";
        Polygon keepOut = plot.Add.Polygon(line);
        keepOut.FillColor = FigureStyle.Colour(1).WithAlpha(0.15);
        keepOut.LineColor = FigureStyle.Colour(1);
        keepOut.LineWidth = FigureStyle.LineWidth;
        keepOut.LinePattern = LinePattern.Dashed;
        keepOut.LegendText = $"keep out: {limit.Title}";
        Stand(plot, plan.Source.Pose, "source", FigureStyle.Colour(0), MarkerShape.FilledTriangleUp);
        Stand(plot, plan.Receiver.Pose, "receiver", FigureStyle.Colour(2), MarkerShape.FilledSquare);
        plot.Axes.SquareUnits();
        plot.ShowLegend(Alignment.LowerRight);
        return plot;
    }

    private static void Stand(Plot plot, Pose pose, string name, Color colour, MarkerShape shape)
    {
        const double Reach = 0.15;
        Coordinates here = OnPlan(pose.Position), ahead = OnPlan(pose.ToBench(new Vector(Reach, 0.0, 0.0)));
        Arrow looks = plot.Add.Arrow(here, ahead);
        looks.ArrowFillColor = looks.ArrowLineColor = colour;
        looks.ArrowWidth = 2f;
        Marker marker = plot.Add.Marker(here, shape, 12, colour);
        marker.LegendText = name;
    }

    private static Coordinates OnPlan(Vector place) => new(place.X * CentimetresPerMetre, place.Y * CentimetresPerMetre);
}
