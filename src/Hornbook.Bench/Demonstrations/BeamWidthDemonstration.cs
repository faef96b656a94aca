namespace Hornbook.Bench.Demonstrations;

/// <summary>The beam width: one end is turned on the spot while the other stands.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Turned">Which end turns.</param>
/// <param name="From">First angle off its present direction [rad].</param>
/// <param name="To">Last angle off its present direction [rad].</param>
/// <param name="Points">How many angles; ≥ 3.</param>
public sealed record BeamWidthDemonstration(string Name, BenchEnd Turned, double From, double To, int Points) : Demonstration(Name);
