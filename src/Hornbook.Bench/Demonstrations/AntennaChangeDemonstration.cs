namespace Hornbook.Bench.Demonstrations;

/// <summary>Gain: the antenna of one end is changed for another, the mouth kept in place.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Changed">Which end.</param>
/// <param name="Antennas">Names of the antennas, in the order shown; ≥ 2.</param>
public sealed record AntennaChangeDemonstration(string Name, BenchEnd Changed, IReadOnlyList<string> Antennas) : Demonstration(Name);
