using BenchmarkDotNet.Attributes;
using Hornbook.Physics;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Lattices;
using Hornbook.Physics.Radiation.Transfers;

namespace Hornbook.Benchmarks.Radiation;

/// <summary>The field of a grid of 150 mm at metal of 300 mm, parallel, on one axis, rolled by 45°, and back: by pairs and nodes, and by turns.</summary>
[Config(typeof(ShortIterations))]
public class TurnedTransferBenchmarks
{
    // As sweeps ask for it.
    private const double Tolerance = 5e-4;

    private static readonly Frame Own = Frame.Of(default);

    private CurrentSamples _currents = CurrentSamples.None;
    private FieldSample[] _fields = [];
    private FieldTransfer _sorted = null!; // set up before any run
    private TurnedTransfer _turned = null!; // set up before any run

    /// <summary>Grid to metal [mm].</summary>
    [Params(5, 50, 100, 200)]
    public int Apart { get; set; }

    /// <summary>Whether the metal sends, and both fields are asked for; else the grid does, and only H along the metal is.</summary>
    [Params(false, true)]
    public bool Back { get; set; }

    /// <summary>Places, currents along their plane and both transfers.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        Frame away = Frame.Of(new Pose(new Vector(1e-3 * Apart, 0.0, 0.0), roll: 0.25 * Math.PI));
        Lattice grid = Square(24, 0.15).Posed(Own), metal = Square(64, 0.3).Posed(away);
        (Lattice from, Lattice to) = Back ? (metal, grid) : (grid, metal);
        Vector[] sources = Places(from), observers = Places(to);
        Random random = new(1);
        ComplexVector[] Along() => Array.ConvertAll(sources, _ => ComplexVector.Along(from.Column, random.NextDouble()) + ComplexVector.Along(from.Row, random.NextDouble()));
        _currents = new CurrentSamples(sources, Along(), Back ? new ComplexVector[sources.Length] : Along());
        _fields = new FieldSample[observers.Length];
        _sorted = FieldTransfer.Between(
            SampleTree.Of(sources, Back ? away : Own), SampleTree.Of(observers, Back ? Own : away), TransferBodies.Wavenumber, Tolerance, Back ? FieldPart.Whole : FieldPart.Magnetic);
        _turned = TurnedTransfer.Between(from, to, TransferBodies.Wavenumber, Back ? FieldPart.Whole : FieldPart.MagneticAlong)!;
    }

    /// <summary>By boxes.</summary>
    [Benchmark(Baseline = true)]
    public void PairsAndNodes() => _sorted.Add(_currents, _fields);

    /// <summary>By turns.</summary>
    [Benchmark]
    public void Turned() => _turned.Add(_currents, _fields);

    private static Lattice Square(int count, double side) =>
        new(new Vector(0.0, 0.5 * side * ((1.0 / count) - 1.0), 0.5 * side * ((1.0 / count) - 1.0)), new Vector(0.0, side / count, 0.0), new Vector(0.0, 0.0, side / count), count, count);

    private static Vector[] Places(Lattice lattice) => [.. Enumerable.Range(0, lattice.Count).Select(i => lattice.Place(i % lattice.Columns, i / lattice.Columns))];
}
