namespace Hornbook.Bench.Demonstrations;

/// <summary>The distance law: the receiver is moved along the source's axis.</summary>
/// <param name="Name">Short name.</param>
/// <param name="From">First distance from mouth to mouth [m].</param>
/// <param name="To">Last distance from mouth to mouth [m].</param>
/// <param name="Points">How many distances; ≥ 3.</param>
public sealed record DistanceDemonstration(string Name, double From, double To, int Points) : Demonstration(Name);
