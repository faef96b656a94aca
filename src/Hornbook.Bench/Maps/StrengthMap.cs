using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Radiation;

namespace Hornbook.Bench.Maps;

/// <summary>How strong the wave is over a part of a plane: source and panels together, table top included where its make-up is known.</summary>
/// <param name="Plane">Which plane.</param>
/// <param name="Columns">Places along the bench.</param>
/// <param name="Rows">Places across it or up.</param>
/// <param name="Step">From place to place [m].</param>
/// <param name="Densities">|E|²/2η [W/m²], what a plane wave of this field would carry; row by row from the lowest, each along the bench. NaN on a mouth or a panel's cell.</param>
public sealed record StrengthMap(MapPlane Plane, int Columns, int Rows, double Step, IReadOnlyList<double> Densities)
{
    // A band of 16 cm on the page, after which it is told how far the map has come.
    private const int RowsAtOnce = 20;

    /// <summary>The map over the whole table at the height of the source's axis.</summary>
    /// <param name="scene">The bench.</param>
    /// <param name="source">The sending end.</param>
    /// <param name="panels">The panels.</param>
    /// <param name="step">From place to place [m]; finite, &gt; 0.</param>
    /// <param name="progress">Told the share that is done, 0 to 1 [-], now and then.</param>
    /// <param name="cancellation">Stops the computing.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static StrengthMap OverTable(
        Scene scene, SourceEnd source, IReadOnlyList<BenchPanel> panels, double step, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(scene);
        ArgumentNullException.ThrowIfNull(source);
        TableTop table = scene.Plan.Table;
        Vector corner = new(0.0, -0.5 * table.Width, source.Pose.Position.Z);
        Vector[] places = Raster(corner, Vector.UnitY, table.Length, table.Width, step, out int columns, out int rows);
        return new StrengthMap(MapPlane.OverTable, columns, rows, step, Over(scene, source, panels, places, columns, progress, cancellation));
    }

    /// <summary>The map in the upright plane along the bench through the source's mouth, from the table top up.</summary>
    /// <param name="scene">The bench.</param>
    /// <param name="source">The sending end.</param>
    /// <param name="panels">The panels.</param>
    /// <param name="height">How high [m]; finite, &gt; 0.</param>
    /// <param name="step">From place to place [m]; finite, &gt; 0.</param>
    /// <param name="progress">Told the share that is done, 0 to 1 [-], now and then.</param>
    /// <param name="cancellation">Stops the computing.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static StrengthMap Upright(
        Scene scene, SourceEnd source, IReadOnlyList<BenchPanel> panels, double height, double step, IProgress<double>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(scene);
        ArgumentNullException.ThrowIfNull(source);
        Vector corner = new(0.0, source.Pose.Position.Y, 0.0);
        Vector[] places = Raster(corner, Vector.UnitZ, scene.Plan.Table.Length, height, step, out int columns, out int rows);
        return new StrengthMap(MapPlane.Upright, columns, rows, step, Over(scene, source, panels, places, columns, progress, cancellation));
    }

    // In the middle of their squares.
    private static Vector[] Raster(Vector corner, Vector upwards, double along, double up, double step, out int columns, out int rows)
    {
        columns = Math.Max(1, (int)Math.Round(along / step));
        rows = Math.Max(1, (int)Math.Round(up / step));
        Vector[] places = new Vector[columns * rows];
        for (int i = 0; i < places.Length; i++)
        {
            double x = ((i % columns) + 0.5) * along / columns, y = ((i / columns) + 0.5) * up / rows;
            places[i] = corner + (Vector.UnitX * x) + (upwards * y);
        }

        return places;
    }

    private static double[] Over(
        Scene scene, SourceEnd source, IReadOnlyList<BenchPanel> panels, Vector[] places, int columns, IProgress<double>? progress, CancellationToken cancellation)
    {
        FieldSample[] fields = new FieldSample[places.Length];
        Illumination lit = scene.Light(source, panels);
        int band = columns * RowsAtOnce;
        for (int first = 0; first < places.Length; first += band)
        {
            cancellation.ThrowIfCancellationRequested();
            int count = Math.Min(band, places.Length - first);
            lit.Field(places.AsSpan(first, count), fields.AsMemory(first, count));
            progress?.Report((first + count) / (double)places.Length);
        }

        // The field is that of one watt radiated.
        Physics.Antennas.Antenna antenna = scene.Antenna(source.Antenna);
        double scale = source.Power * antenna.MismatchEfficiency * antenna.OhmicEfficiency / (2.0 * Constants.VacuumImpedance);
        return Array.ConvertAll(fields, field => scale * field.Electric.SquaredMagnitude);
    }
}

/// <summary>The plane of a map.</summary>
public enum MapPlane
{
    /// <summary>Level, at the height of the source's axis.</summary>
    OverTable,

    /// <summary>Upright along the bench, through the source's mouth.</summary>
    Upright,
}
