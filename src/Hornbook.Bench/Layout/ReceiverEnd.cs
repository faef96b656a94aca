using Hornbook.Physics;

namespace Hornbook.Bench.Layout;

/// <summary>The receiving end.</summary>
/// <param name="Antenna">Name of its antenna.</param>
/// <param name="Pose">Where the mouth's centre stands and how it is held; facing the source its turn is 180°.</param>
public sealed record ReceiverEnd(string Antenna, Pose Pose);
