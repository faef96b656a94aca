using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Exposure;
using Hornbook.Tabletop.Sheets;

namespace Hornbook.Tabletop;

/// <summary>One visitor's bench: where the two ends stand now, and what is read there. Nothing is written to the file.</summary>
public sealed class BenchSession
{
    // Two mouths cannot stand in one place; nearer than this the pose is refused [m].
    private const double LeastGap = 0.01;

    private readonly LoadedBench _bench;

    public BenchSession(LoadedBench bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        _bench = bench;
        Sheet = SheetLayout.For(bench.Plan);
        Source = bench.Plan.Source;
        Receiver = bench.Plan.Receiver;
        Reading = bench.Scene.Read(Source, Receiver);
    }

    /// <summary>Raised after a move, once <see cref="Reading"/> is up to date.</summary>
    public event Action? Changed;

    public string Name => _bench.Name;

    public BenchPlan Plan => _bench.Plan;

    public SheetLayout Sheet { get; }

    public SourceEnd Source { get; private set; }

    public ReceiverEnd Receiver { get; private set; }

    public Reading Reading { get; private set; }

    public bool StandsAsInFile => Source == Plan.Source && Receiver == Plan.Receiver;

    /// <summary>Straight line between the centres of the two mouths [m].</summary>
    public double Distance => (Receiver.Pose.Position - Source.Pose.Position).Length;

    /// <summary>Where the far zone of the source's antenna begins, 2D²/λ from its mouth [m].</summary>
    public double NearZone => _bench.Scene.Antenna(Source.Antenna).FarDistance;

    /// <summary>How far to stay away from the source; null until it is computed, and where no limit is known.</summary>
    public KeepOutShape? KeepOut { get; private set; }

    /// <summary>The limit behind it.</summary>
    public ExposureLimit? Limit => _bench.Limit;

    /// <summary>What to know of the bench as the file has it; null until it is computed.</summary>
    public IReadOnlyList<Finding>? Findings { get; private set; }

    public Pose PoseOf(BenchEnd end) => end == BenchEnd.Source ? Source.Pose : Receiver.Pose;

    public string AntennaOf(BenchEnd end) => end == BenchEnd.Source ? Source.Antenna : Receiver.Antenna;

    /// <summary>Fetches what takes longer than the first page may.</summary>
    public async Task CompleteAsync()
    {
        KeepOut = await _bench.KeepOut;
        Findings = await _bench.Findings;
    }

    /// <summary>Puts an end into a pose, held within the sheet; one that would bring the mouths together is refused.</summary>
    public void Place(BenchEnd end, Pose pose)
    {
        Pose held = Sheet.Held(pose);
        if (held == PoseOf(end) || (held.Position - PoseOf(Other(end)).Position).Length < LeastGap)
        {
            return;
        }

        if (end == BenchEnd.Source)
        {
            Source = Source with { Pose = held };
        }
        else
        {
            Receiver = Receiver with { Pose = held };
        }

        Recompute();
    }

    /// <summary>Puts both ends back to where the file has them.</summary>
    public void PutBack()
    {
        Source = Plan.Source;
        Receiver = Plan.Receiver;
        Recompute();
    }

    /// <summary>Where the file has an end.</summary>
    public Pose FiledPose(BenchEnd end) => end == BenchEnd.Source ? Plan.Source.Pose : Plan.Receiver.Pose;

    private static BenchEnd Other(BenchEnd end) => end == BenchEnd.Source ? BenchEnd.Receiver : BenchEnd.Source;

    private void Recompute()
    {
        Reading = _bench.Scene.Read(Source, Receiver);
        Changed?.Invoke();
    }
}
