using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Outlines;

namespace Hornbook.Bench.Findings;

/// <summary>A panel in its pose, as a thing that takes room.</summary>
/// <param name="panel">The panel.</param>
internal sealed class StandingPanel(BenchPanel panel)
{
    // Pieces of this size say how near a panel is to a mouth, to a third of a centimetre [m]; a large panel is not cut into more than so many each way.
    private const double Piece = 5e-3;
    private const double MostPieces = 100.0;

    private readonly Lazy<IReadOnlyList<Cell>> _cells = new(() => panel.Panel.Surface.Cells(
        Math.Max(Piece, Math.Max(panel.Panel.Surface.Width, panel.Panel.Surface.Height) / MostPieces)));

    /// <summary>The panel.</summary>
    internal BenchPanel Panel => panel;

    /// <summary>Height of its lowest point above the table top [m].</summary>
    internal double Lowest => Surface.Loops.SelectMany(loop => loop).Min(point => panel.Pose.ToBench(point).Z);

    private PanelSurface Surface => panel.Panel.Surface;

    /// <summary>How far it is from the nearest of some points [m].</summary>
    internal double DistanceFrom(IEnumerable<Vector> points) => points.Select(panel.Pose.ToOwn).Min(point => _cells.Value.Min(cell => (cell.Centre - point).Length));

    /// <summary>Whether it and another one cut through each other; only flat ones are looked at.</summary>
    internal bool Cuts(StandingPanel other) => Surface.IsFlat && other.Surface.IsFlat && (IsCutBy(other) || other.IsCutBy(this));

    /// <summary>Whether an edge of another panel passes through this one.</summary>
    private bool IsCutBy(StandingPanel other) => other.Surface.Loops.Any(loop =>
    {
        Vector[] points = [.. loop.Select(point => panel.Pose.ToOwn(other.Panel.Pose.ToBench(point)))];
        return points.Zip([.. points[1..], points[0]], Passing).Any(through => through is Vector place && IsInside(place));
    });

    /// <summary>Where the way between two points passes the plane of the panel; null where it does not.</summary>
    private static Vector? Passing(Vector from, Vector to) => from.X * to.X < 0.0 ? from + ((to - from) * (from.X / (from.X - to.X))) : null;

    /// <summary>Whether a point of its plane lies in its sheet: a ray along y meets its edges an odd number of times.</summary>
    private bool IsInside(Vector point) => Surface.Loops.Sum(loop => loop.Zip([.. loop.Skip(1), loop[0]], (from, to) => Meets(point, from, to) ? 1 : 0).Sum()) % 2 == 1;

    private static bool Meets(Vector point, Vector from, Vector to) =>
        (from.Z > point.Z) != (to.Z > point.Z) && point.Y < from.Y + ((to.Y - from.Y) * (point.Z - from.Z) / (to.Z - from.Z));
}
