namespace Hornbook.Physics.Exposure;

/// <summary>The published limits that the program knows, and the choice among them.</summary>
public static class ExposureLimits
{
    /// <summary>All of them, those that were replaced as well.</summary>
    public static IReadOnlyList<ExposureLimit> All { get; } =
        [.. GuidelineLimits.All, .. EuropeanLimits.All, .. AmericanLimits.All, .. NationalLimits.All];

    /// <summary>The limit of an identifier; null where there is none.</summary>
    public static ExposureLimit? Find(string id) => All.FirstOrDefault(l => l.Id == id);

    /// <summary>Those for a group at a frequency [Hz] that are in force.</summary>
    public static IEnumerable<ExposureLimit> InForce(ExposureGroup group, double frequency) =>
        All.Where(l => l.IsInForce && l.Group == group && l.Band.Contains(frequency));

    /// <summary>The lowest of those in force anywhere for any kind of source; null where none covers the frequency [Hz].</summary>
    /// <remarks>Limits for fixed installations or scanning antennas only are left out: a bench is neither.</remarks>
    public static ExposureLimit? Strictest(ExposureGroup group, double frequency) =>
        InForce(group, frequency).Where(l => l.Scope == LimitScope.AnySource).MinBy(l => l.PowerDensity(frequency));
}
