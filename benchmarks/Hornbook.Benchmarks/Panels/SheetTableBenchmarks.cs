using BenchmarkDotNet.Attributes;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Benchmarks.Panels;

/// <summary>What it takes to make a sheet ready for a frequency at which it was never asked before.</summary>
[MemoryDiagnoser]
[Config(typeof(ShortIterations))]
public class SheetTableBenchmarks
{
    private readonly LayeredSheet _board = new(new Layer(Dielectrics.Find("FR-4")!, 1.6e-3));
    private readonly StripGrid _strips = new(5e-3, 2e-3);
    private readonly WireGrid _wires = new(8e-3, 0.8e-3);
    private double _frequency = 10.525e9;

    [Benchmark]
    public ISheetResponse Board() => _board.At(Next());

    [Benchmark]
    public ISheetResponse Strips() => _strips.At(Next());

    [Benchmark]
    public ISheetResponse StripsOnABoard() => new BoardedStripGrid(_strips, _board).At(Next());

    [Benchmark]
    public ISheetResponse Wires() => _wires.At(Next());

    // What was worked out is kept.
    private double Next() => _frequency += 1.0;
}
