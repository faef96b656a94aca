using BenchmarkDotNet.Attributes;
using Hornbook.Physics;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Benchmarks.Panels;

/// <summary>What a panel asks of its sheet at every cell in every sweep, and what solving for one direction would cost instead.</summary>
[MemoryDiagnoser]
[Config(typeof(ShortIterations))]
public class SheetBenchmarks
{
    private const double Frequency = 10.525e9;
    private const double Across = 0.3;
    private const double Along = 0.2;

    private ISheetResponse _table = null!;
    private ISheetResponse _solved = null!;

    /// <summary>What the panel is made of.</summary>
    [Params("board", "strips 0.18", "strips 0.6", "strips on a board", "wires")]
    public string Sheet { get; set; } = "board";

    [GlobalSetup]
    public void Prepare()
    {
        double wavelength = Constants.SpeedOfLight / Frequency;
        LayeredSheet board = new(new Layer(Dielectrics.Find("FR-4")!, 1.6e-3));
        StripGrid strips = new(5e-3, 2e-3), coarse = new(0.6 * wavelength, 0.3 * wavelength);
        BoardedStripGrid etched = new(strips, board);
        WireGrid wires = new(8e-3, 0.8e-3);
        (_table, _solved) = Sheet switch
        {
            "board" => (board.At(Frequency), new Anew(board)),
            "strips 0.18" => (strips.At(Frequency), strips.Solved(Frequency)),
            "strips 0.6" => (coarse.At(Frequency), coarse.Solved(Frequency)),
            "strips on a board" => (etched.At(Frequency), etched.Solved(Frequency)),
            _ => (wires.At(Frequency), wires.Solved(Frequency)),
        };
    }

    [Benchmark(Baseline = true)]
    public SheetMatrices Read() => _table.Arriving(SheetFace.Back, Across, Along);

    [Benchmark]
    public SheetMatrices Solve() => _solved.Arriving(SheetFace.Back, Across, Along);

    private sealed class Anew(LayeredSheet layers) : ISheetResponse
    {
        public SheetMatrices Arriving(SheetFace face, double across, double along)
        {
            double angle = Math.Asin(Math.Sqrt((across * across) + (along * along)));
            SheetResponse beside = layers.At(Frequency, angle, Polarisation.Across), within = layers.At(Frequency, angle, Polarisation.Within);
            return new SheetMatrices(TangentialMatrix.Identity * beside.Reflection, TangentialMatrix.Identity * within.Transmission);
        }
    }
}
