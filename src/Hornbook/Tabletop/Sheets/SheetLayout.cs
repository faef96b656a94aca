using System.Globalization;
using Hornbook.Bench.Layout;
using Hornbook.Physics;

namespace Hornbook.Tabletop.Sheets;

/// <summary>Where plan and elevation lie on one sheet at one scale: the plan above, the elevation below it at the same x.</summary>
/// <remarks>Sheet units are millimetres of the bench, so that everything drawn is true to scale by construction.</remarks>
public sealed record SheetLayout
{
    // Room around the table for the tails of the guides, their knobs and the rulers [mm].
    private const double SideMargin = 170.0;
    private const double TopMargin = 70.0;
    private const double Between = 150.0;
    private const double BottomMargin = 80.0;
    private const double LeastHeadroom = 0.34;

    // Width over height of the place that a wide screen leaves for the sheet.
    private const double WideScreen = 1.36;

    private SheetLayout(TableTop table, double headroom)
    {
        Table = table;
        Headroom = headroom;
    }

    public TableTop Table { get; }

    /// <summary>Height above the table that the elevation shows [m].</summary>
    public double Headroom { get; }

    public double LengthMm => 1e3 * Table.Length;

    public double HalfWidthMm => 500.0 * Table.Width;

    public double HeadroomMm => 1e3 * Headroom;

    /// <summary>The sheet's y where the elevation has its table top [mm].</summary>
    public double TableTopLine => HalfWidthMm + Between + HeadroomMm;

    public double Left => -SideMargin;

    public double Top => -HalfWidthMm - TopMargin;

    public double Width => LengthMm + (2.0 * SideMargin);

    public double Height => TableTopLine + BottomMargin - Top;

    /// <summary>Height of the lettering [mm]: as large on the screen for a long table as for a short one, whichever side of the sheet fills its place.</summary>
    public double LetterMm => Math.Max(Width, WideScreen * Height) / 62.0;

    public string ViewBox => string.Create(CultureInfo.InvariantCulture, $"{Left:0.#} {Top:0.#} {Width:0.#} {Height:0.#}");

    public static SheetLayout For(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        double highest = plan.Panels.Where(panel => panel.Stands).Select(panel => panel.Pose.Position.Z)
            .Append(plan.Source.Pose.Position.Z).Append(plan.Receiver.Pose.Position.Z).Max();
        return new SheetLayout(plan.Table, Math.Max(LeastHeadroom, Math.Ceiling(10.0 * (highest + 0.12)) / 10.0));
    }

    /// <summary>This sheet, or a higher one where something of a changed bench would stand at its upper edge; another table gets a new sheet.</summary>
    public SheetLayout Grown(BenchPlan plan)
    {
        SheetLayout fitting = For(plan);
        return fitting.Table.Length == Table.Length && fitting.Table.Width == Table.Width && fitting.Headroom <= Headroom ? this : fitting;
    }

    /// <summary>Where a place of the bench is seen.</summary>
    public SheetPoint Project(SheetView view, Vector place) => view == SheetView.Plan
        ? new SheetPoint(1e3 * place.X, -1e3 * place.Y)
        : new SheetPoint(1e3 * place.X, TableTopLine - (1e3 * place.Z));

    /// <summary>How a step on the sheet moves a thing on the bench [m].</summary>
    public static Vector ToBench(SheetView view, SheetPoint step) => view == SheetView.Plan
        ? new Vector(1e-3 * step.X, -1e-3 * step.Y, 0.0)
        : new Vector(1e-3 * step.X, 0.0, -1e-3 * step.Y);

    /// <summary>The same pose with its mouth over the table and under the sheet's upper edge.</summary>
    public Pose Held(Pose pose) => pose with
    {
        Position = new Vector(
            Math.Clamp(pose.Position.X, 0.0, Table.Length),
            Math.Clamp(pose.Position.Y, -Table.Width / 2.0, Table.Width / 2.0),
            Math.Clamp(pose.Position.Z, 0.0, Headroom)),
    };
}
