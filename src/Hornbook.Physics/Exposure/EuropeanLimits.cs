using static Hornbook.Physics.Exposure.LimitTable;

namespace Hornbook.Physics.Exposure;

/// <summary>Limits of the European Union [Eu1999], [Eu2013].</summary>
internal static class EuropeanLimits
{
    internal static IReadOnlyList<ExposureLimit> All { get; } =
    [
        new("eu-1999-public", "EU recommendation 1999, public", Gigahertz(2.0, 300.0), Always(10.0), AveragingTime1998)
        {
            Instrument = "Council Recommendation 1999/519/EC", Group = ExposureGroup.Public, AveragingArea = 20.0 * SquareCentimetre,
            Origin = "10 W/m² at 10 to 300 GHz read in a copy of an ITU report; the rest from memory",
            Remarks = "also 61 V/m; a recommendation to the member states, many of which are stricter",
        },
        new("eu-2013-workers", "EU directive 2013, workers", Gigahertz(2.0, 300.0), Always(50.0), AveragingTime1998)
        {
            Instrument = "Directive 2013/35/EU, action level", Group = ExposureGroup.Workers, AveragingArea = 20.0 * SquareCentimetre,
            Origin = "read in a national transposition in English",
            Remarks = "also 140 V/m; over 1 cm² up to twenty times as much; the same 50 W/m² is the exposure limit value from 6 GHz up",
        },
    ];
}
