using System.Globalization;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Exposure;
using ScottPlot;
using ScottPlot.Plottables;

namespace Hornbook.Drawing.Figures;

/// <summary>The bench from above and from the side, true to scale, with a keep-out line for each of several limits; each line bears its limit.</summary>
public static class KeepOutLinesFigure
{
    private const int Height = 880;
    private const int Directions = 120;
    private const double CentimetresPerMetre = 100.0;

    /// <summary>The figure.</summary>
    /// <param name="plan">The bench.</param>
    /// <param name="field">The field of its source at the worst-case power.</param>
    /// <param name="densities">What the limits allow [W/m²], each &gt; 0; the first lines are drawn boldest.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static Figure Of(BenchPlan plan, ExposureField field, IReadOnlyList<double> densities, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(field);
        ArgumentNullException.ThrowIfNull(densities);
        View[] views = [new("from above", "across [cm]", place => place.Y, angle => new Vector(Math.Cos(angle), Math.Sin(angle), 0.0)), new("from the side", "up [cm]", place => place.Z, angle => new Vector(Math.Cos(angle), 0.0, Math.Sin(angle)))];
        Coordinates[][][] lines = [.. views.Select(view => densities.Select(density => Line(plan.Source.Pose, field, density, view, cancellation)).ToArray())];
        string title = $"{plan.Title}: keep out";
        string description = "Nobody stays inside a line around the source. From the outermost: " + string.Join("; ", densities.Order().Select(Label)) + ".";
        return new Figure(title, description, FigureStyle.Width, Height, () => [.. views.Select((view, i) => Compose(i == 0 ? title : string.Empty, plan, view, lines[i], densities))]);
    }

    private static string Label(double density) => string.Create(CultureInfo.InvariantCulture, $"{density:0.##} W/m²");

    private static Coordinates[] Line(Pose source, ExposureField field, double density, View view, CancellationToken cancellation)
    {
        Coordinates[] line = new Coordinates[Directions];
        Parallel.For(0, Directions, new ParallelOptions { CancellationToken = cancellation }, i =>
        {
            Vector direction = view.Towards(2.0 * Math.PI * i / Directions);
            line[i] = view.Of(source.Position + (direction * KeepOut.Towards(field, density, source.ToOwn(source.Position + direction))));
        });
        return line;
    }

    private static Plot Compose(string title, BenchPlan plan, View view, Coordinates[][] lines, IReadOnlyList<double> densities)
    {
        Plot plot = FigureStyle.NewPlot(title, $"along the table, {view.Name} [cm]", view.Axis);
        Table(plot, plan, view);
        for (int i = 0; i < lines.Length; i++)
        {
            Polygon line = plot.Add.Polygon(lines[i]);
            line.FillColor = FigureStyle.Colour(1).WithAlpha(0.06);
            line.LineColor = FigureStyle.Colour(i == 0 ? 1 : 3);
            line.LineWidth = i == 0 ? 1.4f * FigureStyle.LineWidth : 0.7f * FigureStyle.LineWidth;
            line.LinePattern = FigureStyle.Pattern(i);
            line.LegendText = Label(densities[i]);
        }

        Name(plot, plan, view, lines[0]);

        Stand(plot, plan.Source.Pose, view, "source", FigureStyle.Colour(0), MarkerShape.FilledTriangleUp);
        Stand(plot, plan.Receiver.Pose, view, "receiver", FigureStyle.Colour(2), MarkerShape.FilledSquare);
        plot.Axes.SquareUnits();
        plot.ShowLegend(Alignment.UpperRight);
        return plot;
    }

    /// <summary>The first line says at its foremost place how far that is from the mouth.</summary>
    private static void Name(Plot plot, BenchPlan plan, View view, Coordinates[] line)
    {
        Coordinates mouth = view.Of(plan.Source.Pose.Position);
        Coordinates furthest = line.MaxBy(place => place.Distance(mouth));
        Text text = plot.Add.Text(string.Create(CultureInfo.InvariantCulture, $"keep out: {Math.Ceiling(furthest.Distance(mouth) - 1e-6):0} cm"), furthest);
        text.LabelFontName = Lettering.EmbeddedFont.Name;
        text.LabelFontSize = 14f;
        text.LabelFontColor = Colors.Black;
        text.LabelAlignment = furthest.X < mouth.X ? Alignment.LowerRight : Alignment.LowerLeft;
    }

    private static void Table(Plot plot, BenchPlan plan, View view)
    {
        double half = 0.5 * plan.Table.Width;
        Coordinates near = view.Of(new Vector(0.0, -half, -0.02)), far = view.Of(new Vector(plan.Table.Length, half, 0.0));
        Rectangle table = plot.Add.Rectangle(near.X, far.X, near.Y, far.Y);
        table.FillColor = Colors.Black.WithAlpha(0.06);
        table.LineColor = FigureStyle.Grey;
        table.LegendText = "table";
    }

    private static void Stand(Plot plot, Pose pose, View view, string name, Color colour, MarkerShape shape)
    {
        const double Reach = 0.15;
        Arrow looks = plot.Add.Arrow(view.Of(pose.Position), view.Of(pose.ToBench(new Vector(Reach, 0.0, 0.0))));
        looks.ArrowFillColor = looks.ArrowLineColor = colour;
        looks.ArrowWidth = 2f;
        plot.Add.Marker(view.Of(pose.Position), shape, 12, colour).LegendText = name;
    }

    /// <summary>A way to look at the bench.</summary>
    /// <param name="Name">In words.</param>
    /// <param name="Axis">Quantity and unit of the upright axis.</param>
    /// <param name="Upright">What is drawn upwards.</param>
    /// <param name="Towards">A direction in the plane that is drawn.</param>
    private sealed record View(string Name, string Axis, Func<Vector, double> Upright, Func<double, Vector> Towards)
    {
        internal Coordinates Of(Vector place) => new(place.X * CentimetresPerMetre, Upright(place) * CentimetresPerMetre);
    }
}
