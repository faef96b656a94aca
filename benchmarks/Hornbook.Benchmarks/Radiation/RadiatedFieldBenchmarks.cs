using System.Numerics;
using BenchmarkDotNet.Attributes;
using Hornbook.Physics;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Tests.Radiation;
using Vector = Hornbook.Physics.Vector;

namespace Hornbook.Benchmarks.Radiation;

/// <summary>E and H of 180 currents at 184 points, as between two horns; time for each pair of source and observer.</summary>
[MemoryDiagnoser]
[Config(typeof(ShortIterations))]
public class RadiatedFieldBenchmarks
{
    private const int Sources = 180, Observers = 184, MapObservers = 46 * 1024;
    private const int Pairs = Sources * Observers;

    // Counted in the source, a multiply-add as two, a root or a quotient as one, rounding, magnitude and change of sign as none:
    // GreenTerms 69 (of them sine and cosine 37), CurrentSums.Add 94, called twice. A mouth takes 69 + 84 (MouthSums.Add), metal 69 + 94 (ElectricSums.Add).
    private const long OperationsPerPair = 69 + (2 * 94);
    private const double Wavenumber = 220.0;

    private readonly long _operations = Pairs * OperationsPerPair;
    private readonly CurrentSamples _currents = Currents();
    private readonly CurrentSamples _mouth = Mouth();
    private readonly CurrentSamples _metal = Metal();
    private readonly Vector[] _points = Points(Observers);
    private readonly FieldSample[] _fields = new FieldSample[Observers];
    private readonly Vector[] _map = Points(MapObservers);
    private readonly FieldSample[] _mapFields = new FieldSample[MapObservers];

    [Benchmark(Baseline = true, OperationsPerInvoke = Pairs)]
    public void Scalar()
    {
        for (int i = 0; i < _points.Length; i++)
        {
            _fields[i] = ScalarField.At(_currents, Wavenumber, _points[i]);
        }
    }

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void Kernel512() => FieldKernel<Lanes512>.Evaluate(_currents, Wavenumber, _points, _fields);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public double Peak512() => PeakArithmetic<Lanes512>.Run(_operations);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void Kernel256() => FieldKernel<Lanes256>.Evaluate(_currents, Wavenumber, _points, _fields);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public double Peak256() => PeakArithmetic<Lanes256>.Run(_operations);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void Mouth512() => FieldKernel<Lanes512>.Evaluate(_mouth, Wavenumber, _points, _fields);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void Mouth256() => FieldKernel<Lanes256>.Evaluate(_mouth, Wavenumber, _points, _fields);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void Metal512() => FieldKernel<Lanes512>.Evaluate(_metal, Wavenumber, _points, _fields);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void Metal256() => FieldKernel<Lanes256>.Evaluate(_metal, Wavenumber, _points, _fields);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void Floats512() => FieldKernel<SingleLanes512>.Evaluate(_currents, Wavenumber, _points, _fields);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void Floats256() => FieldKernel<SingleLanes256>.Evaluate(_currents, Wavenumber, _points, _fields);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void Kernel128() => FieldKernel<Lanes128>.Evaluate(_currents, Wavenumber, _points, _fields);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public double Peak128() => PeakArithmetic<Lanes128>.Run(_operations);

    [Benchmark(OperationsPerInvoke = Sources * MapObservers)]
    public void MapOnAllCores() => RadiatedField.EvaluateMap(_currents, Wavenumber, _map, _mapFields);

    private static CurrentSamples Currents()
    {
        Random random = new(1);
        double Next() => random.NextDouble() - 0.5;
        Vector[] points = [.. Enumerable.Range(0, Sources).Select(_ => new Vector(0.0, 0.1 * Next(), 0.1 * Next()))];
        ComplexVector[] Phasors() => Array.ConvertAll(points, _ =>
            new ComplexVector(new Complex(Next(), Next()), new Complex(Next(), Next()), new Complex(Next(), Next())));
        return new CurrentSamples(points, Phasors(), Array.ConvertAll(Phasors(), m => m * Constants.VacuumImpedance));
    }

    private static CurrentSamples Mouth()
    {
        CurrentSamples any = Currents();
        return new CurrentSamples(
            any.Points,
            Array.ConvertAll(any.Electric.ToArray(), j => new ComplexVector(0, 0, j.Z)),
            Array.ConvertAll(any.Magnetic.ToArray(), m => new ComplexVector(0, m.Y, 0)));
    }

    private static CurrentSamples Metal()
    {
        CurrentSamples any = Currents();
        return new CurrentSamples(any.Points, any.Electric, new ComplexVector[any.Count]);
    }

    private static Vector[] Points(int count)
    {
        Random random = new(2);
        return [.. Enumerable.Range(0, count).Select(_ => new Vector(0.8 + random.NextDouble(), random.NextDouble(), random.NextDouble()))];
    }
}
