namespace Hornbook.Bench.Demonstrations;

/// <summary>Polarisation: the receiver is rolled about its axis.</summary>
/// <param name="Name">Short name.</param>
/// <param name="From">First roll off its present one [rad].</param>
/// <param name="To">Last roll off its present one [rad].</param>
/// <param name="Points">How many angles; ≥ 3.</param>
public sealed record PolarisationDemonstration(string Name, double From, double To, int Points) : Demonstration(Name);
