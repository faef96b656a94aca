using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Exposure;

namespace Hornbook.Tabletop.Desk;

/// <summary>All that the keep-out distance depends on, so that it is computed again only when one of these has changed.</summary>
/// <param name="Antenna">The source's.</param>
/// <param name="WorstCasePower">The most that the source can give [W].</param>
/// <param name="Limit">The limit that the bench chooses; null where none is known at its frequency.</param>
public sealed record KeepOutQuestion(Antenna Antenna, double WorstCasePower, ExposureLimit? Limit)
{
    public static KeepOutQuestion Of(Scene scene)
    {
        ArgumentNullException.ThrowIfNull(scene);
        return new KeepOutQuestion(scene.Source, scene.Plan.Source.WorstCasePower, ChosenLimit.Of(scene.Plan));
    }

    /// <summary>How far to stay away; a shape of nothing where no limit is known.</summary>
    public KeepOutShape? Answer() => Limit is { } limit
        ? KeepOutShape.Of(ExposureField.Of(Antenna, WorstCasePower), limit.PowerDensity(Antenna.Frequency))
        : null;
}
