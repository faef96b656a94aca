using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics.Exposure;

namespace Hornbook.Tabletop;

/// <summary>The bench that the page shows, made ready to compute once and shared by everyone who looks.</summary>
/// <param name="scene">Plan and antennas.</param>
/// <param name="name">What to call its file on the page.</param>
public sealed class LoadedBench(Scene scene, string name)
{
    private readonly Lazy<Task<KeepOutShape?>> _keepOut = new(() => Task.Run(() => Surround(scene)));
    private readonly Lazy<Task<IReadOnlyList<Finding>>> _findings = new(() => Task.Run(() => BenchFindings.Of(scene)));

    public Scene Scene { get; } = scene;

    public string Name { get; } = name;

    public BenchPlan Plan => Scene.Plan;

    /// <summary>The limit that the file chooses; null where none is known at its frequency.</summary>
    public ExposureLimit? Limit => ChosenLimit(Plan);

    /// <summary>How far to stay away from the source; computed beside the first page, which does not wait for it.</summary>
    public Task<KeepOutShape?> KeepOut => _keepOut.Value;

    /// <summary>What to know of the bench as it stands in the file; computed beside the first page.</summary>
    public Task<IReadOnlyList<Finding>> Findings => _findings.Value;

    private static KeepOutShape? Surround(Scene scene) => ChosenLimit(scene.Plan) is { } limit
        ? KeepOutShape.Of(
            ExposureField.Of(scene.Source, scene.Plan.Source.WorstCasePower),
            limit.PowerDensity(scene.Plan.Frequency))
        : null;

    private static ExposureLimit? ChosenLimit(BenchPlan plan)
    {
        ExposureLimit? chosen = plan.ExposureLimit == "strictest"
            ? ExposureLimits.Strictest(ExposureGroup.Public, plan.Frequency)
            : ExposureLimits.Find(plan.ExposureLimit);
        return chosen is not null && chosen.Band.Contains(plan.Frequency) ? chosen : null;
    }
}
