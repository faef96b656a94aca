using Hornbook.Bench.Readings;
using Hornbook.Physics.Detection;

namespace Hornbook.Bench.Demonstrations;

/// <summary>One point of a predicted curve.</summary>
/// <param name="Setting">What is set.</param>
/// <param name="Reading">What the bench then reads.</param>
/// <param name="Lower">What is heard where the standing waves between the mouths take away the most.</param>
/// <param name="Upper">What is heard where they add the most.</param>
public sealed record CurvePoint(Setting Setting, Reading Reading, HeardTone Lower, HeardTone Upper);
