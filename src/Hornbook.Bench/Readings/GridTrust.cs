using System.Globalization;
using Hornbook.Bench.Layout;
using Hornbook.Physics;

namespace Hornbook.Bench.Readings;

/// <summary>What a coarse grid takes from the trust in a link: it throws waves into further directions, which are left out.</summary>
internal static class GridTrust
{
    /// <summary>The trust, no better than rough where an end looks at a grid from beyond the angle at which a second wave leaves it.</summary>
    /// <param name="trust">Without that.</param>
    /// <param name="frequency">[Hz].</param>
    /// <param name="source">Pose of the source.</param>
    /// <param name="receiver">Pose of the receiver.</param>
    /// <param name="panels">The panels; those that lie aside do nothing.</param>
    internal static Trust Held(Trust trust, double frequency, Pose source, Pose receiver, IReadOnlyList<BenchPanel> panels)
    {
        BenchPanel? coarse = trust.Level == TrustLevel.Good
            ? panels.FirstOrDefault(panel => panel.Stands && IsBeyond(panel.Panel.Sheet.OneWaveUpTo(frequency), Slant(panel.Pose, source, receiver)))
            : null;
        return coarse is null ? trust : new Trust(TrustLevel.Rough, Sentence(coarse, coarse.Panel.Sheet.OneWaveUpTo(frequency)));
    }

    // Of anything but a coarse grid one wave leaves up to grazing.
    private static bool IsBeyond(double onset, double slant) => onset < 0.5 * Math.PI && slant >= onset;

    /// <summary>The larger of the angles off a panel's normal at which the ends see its middle [rad], 0 to π/2.</summary>
    private static double Slant(Pose panel, Pose source, Pose receiver) =>
        Math.Max(Slant(panel, source.Position), Slant(panel, receiver.Position));

    private static double Slant(Pose panel, Vector from)
    {
        Vector way = from - panel.Position;
        return way.Length == 0.0 ? 0.0 : Math.Acos(Math.Min(1.0, Math.Abs(Vector.Dot(panel.Forward, way)) / way.Length));
    }

    private static string Sentence(BenchPanel panel, double onset)
    {
        string from = onset > 0.0 ? string.Create(CultureInfo.InvariantCulture, $"from {onset * 180.0 / Math.PI:F0}° off its normal on") : "at every angle";
        return $"The grid '{panel.Name}' is so coarse that it throws waves into further directions {from}; they are left out.";
    }
}
