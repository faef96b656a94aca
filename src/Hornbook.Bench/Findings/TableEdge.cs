using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Exposure;

namespace Hornbook.Bench.Findings;

/// <summary>A place at a table's edge and what it gets from the source.</summary>
/// <param name="Distance">From the centre of the source's mouth [m].</param>
/// <param name="Density">Power density there [W/m²].</param>
internal readonly record struct TableEdge(double Distance, double Density)
{
    private const double Step = 0.02;

    /// <summary>The place that gets most, every 2 cm round the table at the height of the source's axis.</summary>
    /// <remarks>Beyond the trusted angle off the axis the density at that angle is taken: the currents over the mouth say too little there.</remarks>
    internal static TableEdge Worst(TableTop table, Pose source, ExposureField field) => Worst(Outline(table), source, field);

    /// <summary>The one of several places that gets most, each raised to the height of the source's axis there.</summary>
    internal static TableEdge Worst(IEnumerable<Vector> outline, Pose source, ExposureField field)
    {
        Vector[] places = [.. outline.Select(edge => AtTrusted(source.ToOwn(AtAxisHeight(source, edge)))).Where(p => field.DistanceFromMouth(p) >= field.ClosestDistance)];
        double[] densities = new double[places.Length];
        field.Densities(places, densities);
        return places.Zip(densities, (place, density) => new TableEdge(place.Length, density)).DefaultIfEmpty().MaxBy(edge => edge.Density);
    }

    /// <summary>The density at a place of the source's own frame [W/m²]; that in the mouth itself where it is too close to be computed.</summary>
    internal static double DensityAt(ExposureField field, Vector own) =>
        field.DistanceFromMouth(own) < field.ClosestDistance ? field.AtMouth : field.Density(AtTrusted(own));

    /// <summary>Every 2 cm, both ends included.</summary>
    internal static IEnumerable<double> Evenly(double from, double to)
    {
        int steps = (int)Math.Ceiling((to - from) / Step);
        return Enumerable.Range(0, steps + 1).Select(i => from + ((to - from) * i / steps));
    }

    private static IEnumerable<Vector> Outline(TableTop table)
    {
        double half = table.Width / 2.0;
        IEnumerable<double> along = Evenly(0.0, table.Length);
        IEnumerable<double> across = Evenly(-half, half);
        return
        [
            .. along.SelectMany(x => new Vector[] { new(x, -half, 0.0), new(x, half, 0.0) }),
            .. across.SelectMany(y => new Vector[] { new(0.0, y, 0.0), new(table.Length, y, 0.0) }),
        ];
    }

    private static Vector AtAxisHeight(Pose source, Vector edge)
    {
        Vector d = edge - source.Position;
        return edge with { Z = source.Position.Z + (Math.Tan(source.Tilt) * Math.Sqrt((d.X * d.X) + (d.Y * d.Y))) };
    }

    private static Vector AtTrusted(Vector own)
    {
        double distance = own.Length;
        double aside = Math.Sqrt((own.Y * own.Y) + (own.Z * own.Z));
        if (own.X >= distance * Math.Cos(FarPattern.TrustedAngle))
        {
            return own;
        }

        double scale = distance * Math.Sin(FarPattern.TrustedAngle) / Math.Max(aside, double.Epsilon);
        return aside > 0.0
            ? new Vector(distance * Math.Cos(FarPattern.TrustedAngle), own.Y * scale, own.Z * scale)
            : new Vector(distance * Math.Cos(FarPattern.TrustedAngle), distance * Math.Sin(FarPattern.TrustedAngle), 0.0);
    }
}
