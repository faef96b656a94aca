using System.Numerics;
using Hornbook.Physics;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Transfers;
using Vector = Hornbook.Physics.Vector;

namespace Hornbook.Benchmarks.Radiation;

/// <summary>A lattice of samples with random currents, electric and magnetic, and the samples of another body that they light.</summary>
internal sealed class TransferBodies
{
    // Common practice: five and more samples a wavelength at the 10.5 GHz of the bench.
    private const double TableStep = 6e-3;
    private const double PanelStep = 5e-3;
    private const double TableProportion = 1.8 / 0.7;

    private readonly Frame _fromAxes;
    private readonly Frame _toAxes;

    private TransferBodies((Vector[] Points, Frame Axes) from, (Vector[] Points, Frame Axes) to)
    {
        (Points, _fromAxes) = from;
        (Observers, _toAxes) = to;
        Currents = Random(Points);
        Fields = new FieldSample[Observers.Length];
    }

    internal const double Wavenumber = 220.0;

    internal Vector[] Points { get; }

    internal Vector[] Observers { get; }

    internal CurrentSamples Currents { get; }

    internal FieldSample[] Fields { get; }

    /// <summary>A panel of 150 mm, 900 samples, that stands askew 80 mm above a table top of about so many samples.</summary>
    internal static TransferBodies PanelAndTable(int samples)
    {
        double width = TableStep * Math.Sqrt(samples / TableProportion);
        return new TransferBodies(
            Sheet(0.15, 0.15, PanelStep, new Pose(new Vector(0.0, 0.0, 0.155), turn: 0.4)), Table(width * TableProportion, width, 0.0));
    }

    /// <summary>Two square sheets of about so many samples each, one 0.3 m above the other.</summary>
    internal static TransferBodies Sheets(int samples)
    {
        double side = TableStep * Math.Sqrt(samples);
        return new TransferBodies(Table(side, side, 0.3), Table(side, side, 0.0));
    }

    internal FieldTransfer Plan() => FieldTransfer.Between(SampleTree.Of(Points, _fromAxes), SampleTree.Of(Observers, _toAxes), Wavenumber);

    /// <summary>The transfer from here to there, on one core.</summary>
    internal OneWay OnOneCore()
    {
        SampleTree from = SampleTree.Of(Points, _fromAxes), to = SampleTree.Of(Observers, _toAxes);
        return new OneWay(from, to, TransferPlan.Of(from, to, Wavenumber, -Math.Log(FieldTransfer.UsualTolerance)).Pairs, Wavenumber, cost: 0.0);
    }

    private static (Vector[] Points, Frame Axes) Table(double length, double width, double height) =>
        Sheet(length, width, TableStep, new Pose(new Vector(0.0, 0.0, height), tilt: Math.PI / 2.0, roll: Math.PI / 2.0));

    private static (Vector[] Points, Frame Axes) Sheet(double width, double height, double step, Pose pose)
    {
        int across = (int)Math.Round(width / step), along = (int)Math.Round(height / step);
        Frame frame = Frame.Of(pose);
        Vector[] points =
        [
            .. from j in Enumerable.Range(0, along)
               from i in Enumerable.Range(0, across)
               select frame.Place(new Vector(0.0, (i + 0.5 - (0.5 * across)) * step, (j + 0.5 - (0.5 * along)) * step))
        ];
        return (points, frame);
    }

    private static CurrentSamples Random(Vector[] points)
    {
        Random random = new(1);
        double Next() => random.NextDouble() - 0.5;
        ComplexVector[] Phasors() => Array.ConvertAll(points, _ =>
            new ComplexVector(new Complex(Next(), Next()), new Complex(Next(), Next()), new Complex(Next(), Next())));
        return new CurrentSamples(points, Phasors(), Array.ConvertAll(Phasors(), m => m * Constants.VacuumImpedance));
    }
}
