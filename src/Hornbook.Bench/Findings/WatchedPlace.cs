using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Exposure;

namespace Hornbook.Bench.Findings;

/// <summary>Where people are around a table, and what they get from its source at worst.</summary>
/// <param name="Name">Where.</param>
/// <param name="Distance">From the centre of the source's mouth to the place there that gets most [m].</param>
/// <param name="Density">Power density at that place, of the worst case of the source [W/m²].</param>
public sealed record WatchedPlace(string Name, double Distance, double Density)
{
    /// <summary>How far a person stands back from a table [m] (common practice, no source).</summary>
    public const double StandingBack = 0.3;

    /// <summary>The four edges, the presenter behind a long one, and the receiver, which is moved by hand.</summary>
    /// <param name="plan">The bench.</param>
    /// <param name="field">The field of its source at the worst-case power.</param>
    /// <remarks>Edges and presenter: the worst place every 2 cm, at the height of the source's axis there. Beyond the trusted angle off the axis the density at that angle is taken.</remarks>
    public static IReadOnlyList<WatchedPlace> Of(BenchPlan plan, ExposureField field)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(field);
        double length = plan.Table.Length, half = 0.5 * plan.Table.Width;
        Vector receiver = plan.Source.Pose.ToOwn(plan.Receiver.Pose.Position);
        WatchedPlace Worst(string name, IEnumerable<Vector> places)
        {
            TableEdge worst = TableEdge.Worst(places, plan.Source.Pose, field);
            return new WatchedPlace(name, worst.Distance, worst.Density);
        }

        return
        [
            Worst("the end of the table ahead, x at its most", Across(length, half)),
            Worst("the end behind, x = 0", Across(0.0, half)),
            Worst("the left long edge", Along(length, half)),
            Worst("the right long edge", Along(length, -half)),
            Worst("a presenter 30 cm behind either long edge", Along(length, half + StandingBack).Concat(Along(length, -half - StandingBack))),
            new("a hand at the receiver", receiver.Length, TableEdge.DensityAt(field, receiver)),
        ];
    }

    private static IEnumerable<Vector> Across(double x, double half) => TableEdge.Evenly(-half, half).Select(y => new Vector(x, y, 0.0));

    private static IEnumerable<Vector> Along(double length, double y) => TableEdge.Evenly(0.0, length).Select(x => new Vector(x, y, 0.0));
}
