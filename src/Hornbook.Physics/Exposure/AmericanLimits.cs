using static Hornbook.Physics.Exposure.LimitTable;

namespace Hornbook.Physics.Exposure;

/// <summary>Limits of the United States [Cfr47] and of Canada [SafetyCode6].</summary>
internal static class AmericanLimits
{
    private const string Fcc = "47 CFR 1.1310";
    private const string Canada = "Health Canada, Safety Code 6 (2015)";

    internal static IReadOnlyList<ExposureLimit> All { get; } =
    [
        new("us-public", "United States, public", Gigahertz(1.5, 100.0), Always(10.0), Always(30.0 * Minute))
        {
            Instrument = Fcc, Group = ExposureGroup.Public, Origin = "read in two copies", Remarks = "written as 1.0 mW/cm²",
        },
        new("us-workers", "United States, workers", Gigahertz(1.5, 100.0), Always(50.0), Always(6.0 * Minute))
        {
            Instrument = Fcc, Group = ExposureGroup.Workers, Origin = "read in two copies", Remarks = "written as 5 mW/cm²",
        },
        new("canada-public", "Canada, public", Gigahertz(6.0, 150.0), Always(10.0), SafetyCode6Time)
        {
            Instrument = Canada, Group = ExposureGroup.Public, Origin = FromMemory, Remarks = "also 61.4 V/m",
        },
        new("canada-workers", "Canada, workers", Gigahertz(6.0, 150.0), Always(50.0), SafetyCode6Time)
        {
            Instrument = Canada, Group = ExposureGroup.Workers, Origin = FromMemory, Remarks = "also 137 V/m",
        },
    ];

    // 6 min to 15 GHz, then 616 000/f^1.2 min with f in MHz.
    private static double SafetyCode6Time(double frequency) =>
        frequency <= 15e9 ? 6.0 * Minute : 616e3 * Minute / Math.Pow(frequency / 1e6, 1.2);
}
