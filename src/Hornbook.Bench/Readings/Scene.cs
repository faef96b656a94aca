using Hornbook.Bench.Layout;
using Hornbook.Physics.Antennas;

namespace Hornbook.Bench.Readings;

/// <summary>A bench made ready to compute: its antennas turned into currents once, then read in any pose.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class Scene
{
    private Scene(BenchPlan plan) => Plan = plan;

    /// <summary>The bench.</summary>
    public BenchPlan Plan { get; }

    /// <summary>Prepares a bench: each antenna is computed once.</summary>
    public static Scene Of(BenchPlan plan) => throw new NotImplementedException();

    /// <summary>An antenna of the bench at its frequency.</summary>
    public Antenna Antenna(string name) => throw new NotImplementedException();

    /// <summary>The reading as the bench stands.</summary>
    public Reading Read() => Read(Plan.Source, Plan.Receiver);

    /// <summary>The reading with source and receiver as given; only what moved is computed.</summary>
    public Reading Read(SourceEnd source, ReceiverEnd receiver) => throw new NotImplementedException();

    /// <summary>The wave in the receiver's guide for the poses given [-]: complex link amplitude, |.|² = link.</summary>
    public System.Numerics.Complex LinkAmplitude(SourceEnd source, ReceiverEnd receiver) => throw new NotImplementedException();
}
