using Hornbook.Physics.Antennas;

namespace Hornbook.Bench.Layout;

/// <summary>An antenna at hand.</summary>
/// <param name="Name">As in the file.</param>
/// <param name="Shape">Its dimensions.</param>
public sealed record NamedAntenna(string Name, AntennaShape Shape);
