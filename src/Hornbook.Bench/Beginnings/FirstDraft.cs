using Hornbook.Bench.Files;
using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;

namespace Hornbook.Bench.Beginnings;

/// <summary>A first bench while it is being set: what its text says, and what comes of it.</summary>
/// <param name="Title">What it is called.</param>
/// <param name="Wish">The answers.</param>
/// <param name="Antennas">What sends and receives, and where.</param>
/// <param name="Height">Of both axes above the table [m].</param>
internal sealed record FirstDraft(string Title, BenchWish Wish, FirstAntennas Antennas, double Height)
{
    private const double LowestAxis = 0.20;
    private const double HighestAxis = 0.60;
    private const double AxisStep = 0.05;

    // Below a mouth so much is left for its clamp [m].
    private const double Clamp = 0.05;

    // What a table top may do before it is felt [dB], as among the findings.
    private const double FeltDb = 1.0;

    /// <summary>Voltage gain of the amplifier [-].</summary>
    internal double Gain { get; init; } = 1.0;

    /// <summary>Of the amplifier [Hz].</summary>
    internal double Bandwidth { get; init; } = 30.0;

    /// <summary>What is shown, in order.</summary>
    internal IReadOnlyList<FirstDemonstration> Shown { get; init; } = [];

    /// <summary>How far people have to stay from the source on its axis [m]; null where no limit is known.</summary>
    internal double? KeepOut { get; init; }

    internal BenchFile File => BenchFile.Parse(FirstBenchText.Of(this), "new-bench.toml");

    internal BenchPlan Plan => File is { Plan: { } plan } ? plan : throw new InvalidOperationException(string.Join('\n', File.Problems));

    /// <summary>Stands both ends as high as their mouths need, and higher until the table is hardly felt.</summary>
    internal static FirstDraft Of(string title, BenchWish wish, FirstAntennas antennas)
    {
        double needed = Math.Max(LowestAxis, Clamp + (0.5 * antennas.All.Max(antenna => antenna.Shape.MouthHeight)));
        int steps = (int)Math.Max(0.0, Math.Round((HighestAxis - needed) / AxisStep));
        FirstDraft[] heights = [.. Enumerable.Range(0, steps + 1).Select(i => new FirstDraft(title, wish, antennas, AxisStep * (Math.Ceiling((needed / AxisStep) - 1e-9) + i)))];
        Scene scene = Scene.Of(heights[0].Plan);
        double Felt(FirstDraft draft) => TableBounce.Of(scene, Lifted(scene.Plan.Source, draft), Lifted(scene.Plan.Receiver, draft)).WoodDb;
        return heights.FirstOrDefault(draft => Felt(draft) <= FeltDb) ?? heights.MinBy(Felt)!;
    }

    private static SourceEnd Lifted(SourceEnd end, FirstDraft draft) => end with { Pose = Lifted(end.Pose, draft) };

    private static ReceiverEnd Lifted(ReceiverEnd end, FirstDraft draft) => end with { Pose = Lifted(end.Pose, draft) };

    private static Pose Lifted(Pose pose, FirstDraft draft) => pose with { Position = pose.Position with { Z = draft.Height } };
}
