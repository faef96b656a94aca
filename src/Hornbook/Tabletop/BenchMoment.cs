using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;

namespace Hornbook.Tabletop;

/// <summary>What the strength of the wave depends on, at one moment.</summary>
/// <param name="Scene">The bench made ready.</param>
/// <param name="Source">The sending end, in hand or not.</param>
/// <param name="Panels">The panels, in hand or not.</param>
/// <param name="Height">How far up the elevation shows [m].</param>
public sealed record BenchMoment(Scene Scene, SourceEnd Source, IReadOnlyList<BenchPanel> Panels, double Height);
