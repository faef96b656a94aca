using BenchmarkDotNet.Attributes;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;

namespace Hornbook.Benchmarks.Readings;

/// <summary>What a demonstrator waits for on the example bench, and with its large horn at both ends: the most work that it can ask for.</summary>
[MemoryDiagnoser]
[Config(typeof(ShortIterations))]
public class SceneBenchmarks
{
    private const double Widest = Math.PI / 3.0;

    private readonly BeamWidthDemonstration _beamWidth = new("beam-width", BenchEnd.Source, -Widest, Widest, 361);
    private BenchPlan _plan = null!;
    private Scene _scene = null!;

    /// <summary>The receiver's antenna.</summary>
    [Params("probe", "large-horn")]
    public string Receiver { get; set; } = "probe";

    [GlobalSetup]
    public void Prepare()
    {
        using Stream stream = typeof(SceneBenchmarks).Assembly.GetManifestResourceStream("evening-bench.toml")!;
        using StreamReader reader = new(stream);
        BenchPlan plan = BenchFile.Parse(reader.ReadToEnd(), "evening-bench.toml").Plan!;
        _plan = plan with { Receiver = plan.Receiver with { Antenna = Receiver } };
        _scene = Scene.Of(_plan);
    }

    [Benchmark]
    public Scene PrepareScene() => Scene.Of(_plan);

    [Benchmark]
    public Reading ReadOnce() => _scene.Read();

    [Benchmark]
    public double BeamWidthOnOneCore()
    {
        double sum = 0.0;
        for (int i = 0; i < _beamWidth.Points; i++)
        {
            double turn = _beamWidth.From + ((_beamWidth.To - _beamWidth.From) * i / (_beamWidth.Points - 1));
            sum += _scene.Read(_plan.Source with { Pose = _plan.Source.Pose with { Turn = turn } }, _plan.Receiver).Link;
        }

        return sum;
    }

    [Benchmark]
    public Curve BeamWidth() => Curve.Of(_scene, _beamWidth);
}
