namespace Hornbook.Bench.Demonstrations;

/// <summary>Which end of the bench.</summary>
public enum BenchEnd
{
    /// <summary>The sending end.</summary>
    Source,

    /// <summary>The receiving end.</summary>
    Receiver,
}

/// <summary>Something that is shown: one thing is moved or changed while the rest stands.</summary>
/// <param name="Name">Short and unique within a bench; used on the command line.</param>
public abstract record Demonstration(string Name);

/// <summary>The beam width: one end is turned on the spot while the other stands.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Turned">Which end turns.</param>
/// <param name="From">First angle off its present direction [rad].</param>
/// <param name="To">Last angle off its present direction [rad].</param>
/// <param name="Points">How many angles; ≥ 3.</param>
public sealed record BeamWidthDemonstration(string Name, BenchEnd Turned, double From, double To, int Points) : Demonstration(Name);

/// <summary>Gain: the antenna of one end is changed for another, the mouth kept in place.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Changed">Which end.</param>
/// <param name="Antennas">Names of the antennas, in the order shown; ≥ 2.</param>
public sealed record AntennaChangeDemonstration(string Name, BenchEnd Changed, IReadOnlyList<string> Antennas) : Demonstration(Name);

/// <summary>The distance law: the receiver is moved along the source's axis.</summary>
/// <param name="Name">Short name.</param>
/// <param name="From">First distance from mouth to mouth [m].</param>
/// <param name="To">Last distance from mouth to mouth [m].</param>
/// <param name="Points">How many distances; ≥ 3.</param>
public sealed record DistanceDemonstration(string Name, double From, double To, int Points) : Demonstration(Name);

/// <summary>Polarisation: the receiver is rolled about its axis.</summary>
/// <param name="Name">Short name.</param>
/// <param name="From">First roll off its present one [rad].</param>
/// <param name="To">Last roll off its present one [rad].</param>
/// <param name="Points">How many angles; ≥ 3.</param>
public sealed record PolarisationDemonstration(string Name, double From, double To, int Points) : Demonstration(Name);
