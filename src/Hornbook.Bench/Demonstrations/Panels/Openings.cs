using Hornbook.Physics;
using Hornbook.Physics.Panels.Outlines;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>What is cut out of a plate, read off its outline.</summary>
internal static class Openings
{
    // A polygon in so many corners passes for a circle when its corners are that evenly far from the middle.
    private const double Roundness = 1e-3;

    /// <summary>Slits side by side along own y: the middle of each and its width [m], ascending.</summary>
    internal static IReadOnlyList<(double Middle, double Width)> Slits(PanelSurface surface) =>
    [
        .. Inner(surface)
            .Select(loop => (Least: loop.Min(point => point.Y), Most: loop.Max(point => point.Y)))
            .Select(slit => (Middle: 0.5 * (slit.Least + slit.Most), Width: slit.Most - slit.Least))
            .OrderBy(slit => slit.Middle)
    ];

    /// <summary>Round openings about the middle: inner and outer radius of each [m], ascending; the inner one is 0 for a hole.</summary>
    /// <remarks>Beyond the outermost circle there is metal, within it none, and so on inwards.</remarks>
    internal static IReadOnlyList<(double Inner, double Outer)> Rings(PanelSurface surface)
    {
        double[] radii = [.. Inner(surface).Where(IsRound).Select(loop => loop.Average(point => point.Length)).OrderDescending()];
        return [.. radii.Chunk(2).Select(pair => (pair.Length > 1 ? pair[1] : 0.0, pair[0])).Reverse()];
    }

    // All loops but the one that reaches farthest.
    private static IEnumerable<IReadOnlyList<Vector>> Inner(PanelSurface surface) =>
        surface.Loops.OrderByDescending(loop => loop.Max(point => point.Length)).Skip(1);

    private static bool IsRound(IReadOnlyList<Vector> loop) =>
        loop.Max(point => point.Length) - loop.Min(point => point.Length) < Roundness * loop.Max(point => point.Length);
}
