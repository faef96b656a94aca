using BenchmarkDotNet.Attributes;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Transfers;

namespace Hornbook.Benchmarks.Radiation;

/// <summary>The field of a panel of 900 samples at a table top: summed directly, and by the transfer to −80 dB, on one core and on all.</summary>
[MemoryDiagnoser]
[Config(typeof(ShortIterations))]
public class FieldTransferBenchmarks
{
    private TransferBodies _bodies = null!;
    private FieldTransfer _plan = null!;
    private OneWay _oneCore = null!;

    /// <summary>Samples of the table top; 35 000 are 1.8 × 0.7 m.</summary>
    [Params(1000, 3000, 10000, 35000)]
    public int Table { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        _bodies = TransferBodies.PanelAndTable(Table);
        _plan = _bodies.Plan();
        _oneCore = _bodies.OnOneCore();
    }

    [Benchmark(Baseline = true)]
    public void Direct() => RadiatedField.Evaluate(_bodies.Currents, TransferBodies.Wavenumber, _bodies.Observers, _bodies.Fields);

    [Benchmark]
    public void TransferOnOneCore() => _oneCore.Add(_bodies.Currents, _bodies.Fields);

    [Benchmark]
    public void DirectOnAllCores() => RadiatedField.EvaluateMap(_bodies.Currents, TransferBodies.Wavenumber, _bodies.Observers, _bodies.Fields);

    [Benchmark]
    public void TransferOnAllCores() => _plan.Add(_bodies.Currents, _bodies.Fields);

    [Benchmark]
    public object TreesAndPlan() => _bodies.Plan();
}
