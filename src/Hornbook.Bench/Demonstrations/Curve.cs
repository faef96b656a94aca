using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Detection;

namespace Hornbook.Bench.Demonstrations;

/// <summary>The predicted curve of a demonstration: a reading for each setting, in the order shown.</summary>
/// <param name="Abscissa">What is changed.</param>
/// <param name="Points">The points; ≥ 1.</param>
public sealed record Curve(Abscissa Abscissa, IReadOnlyList<CurvePoint> Points)
{
    /// <summary>The abscissas of the points, SI units.</summary>
    internal double[] Positions => [.. Points.Select(p => p.Setting.At)];

    /// <summary>The links of the points [-].</summary>
    internal double[] Links => [.. Points.Select(p => p.Reading.Link)];

    /// <summary>The point at which most is received; of equals the one at the greatest setting.</summary>
    internal CurvePoint Strongest => Points.MaxBy(p => (Level(p), p.Setting.At))!;

    /// <summary>The point at which least is received; of equals the one at the greatest setting.</summary>
    internal CurvePoint Weakest => Points.MinBy(p => (Level(p), -p.Setting.At))!;

    /// <summary>Computes the curve of a demonstration, its points side by side on all cores.</summary>
    /// <param name="scene">The bench made ready.</param>
    /// <param name="demonstration">What is moved or changed.</param>
    /// <param name="progress">Told the share that is done, 0 to 1 [-], now and then.</param>
    /// <param name="cancellation">Stops the computing.</param>
    /// <returns>The same curve for the same bench, however many cores there are.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Curve Of(
        Scene scene, Demonstration demonstration, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(scene);
        ArgumentNullException.ThrowIfNull(demonstration);
        IReadOnlyList<Setting> settings = demonstration.Course(scene.Plan);
        cancellation.ThrowIfCancellationRequested();
        PanelWaves[]? waves = CourseWaves.IsFor(scene, settings) ? CourseWaves.Of(scene, settings, progress, cancellation) : null;
        CurvePoint[] points = new CurvePoint[settings.Count];
        int done = 0;
        void Compute(int i)
        {
            points[i] = waves is null ? PointOf(scene, settings[i]) : PointOf(scene, settings[i], waves[i]);
            int known = Interlocked.Increment(ref done);
            progress?.Report(waves is null ? (double)known / points.Length : 1.0);
        }

        // The first alone: where only the receiver moves, the others then find the panels solved.
        Compute(0);
        Parallel.For(1, points.Length, new ParallelOptions { CancellationToken = cancellation }, Compute);
        return new Curve(demonstration.Abscissa, points);
    }

    // To a millionth of a decibel, so that the last bit does not choose between the two sides of a symmetrical bench.
    private static double Level(CurvePoint point) => Math.Round(Decibels.FromRatio(point.Reading.Link), 6);

    /// <summary>One point: the reading at a setting, and the band that the standing waves leave it.</summary>
    public static CurvePoint PointOf(Scene scene, Setting setting)
    {
        ArgumentNullException.ThrowIfNull(scene);
        ArgumentNullException.ThrowIfNull(setting);
        return PointOf(scene, setting, scene.Waves(setting.Source, setting.Receiver, setting.Panels));
    }

    private static CurvePoint PointOf(Scene scene, Setting setting, PanelWaves panels)
    {
        Reading reading = scene.Read(setting.Source, setting.Receiver, setting.Panels, panels);
        DetectionChain chain = scene.Plan.Detection;
        double swing = Decibels.ToRatio(reading.RippleDb);
        return new CurvePoint(setting, reading, chain.Hear(reading.ReceivedPower / swing), chain.Hear(reading.ReceivedPower * swing));
    }
}
