using static Hornbook.Physics.Exposure.LimitTable;

namespace Hornbook.Physics.Exposure;

/// <summary>Limits of international guidelines and standards [Icnirp2020], [Icnirp1998], [IeeeC951].</summary>
internal static class GuidelineLimits
{
    private const string Icnirp2020 = "ICNIRP guidelines 2020";
    private const string Icnirp1998 = "ICNIRP guidelines 1998";
    private const string Ieee = "IEEE Std C95.1-2019";
    private const string Replaced1998 = "ICNIRP 2020 as a guideline; national rules that copied it may still stand";

    internal static IReadOnlyList<ExposureLimit> All { get; } =
    [
        new("icnirp-2020-local-public", "ICNIRP 2020, local, public", Gigahertz(2.0, 300.0), f => Local2020(f, 55.0, 40.0), Always(6.0 * Minute))
        {
            Instrument = Icnirp2020, Group = ExposureGroup.Public, AveragingArea = 4.0 * SquareCentimetre,
            Origin = "limits and time read in a textbook's reprint of table 6; areas from memory",
            Remarks = "above 30 GHz also twice as much over 1 cm²",
        },
        new("icnirp-2020-local-workers", "ICNIRP 2020, local, workers", Gigahertz(2.0, 300.0), f => Local2020(f, 275.0, 200.0), Always(6.0 * Minute))
        {
            Instrument = Icnirp2020, Group = ExposureGroup.Workers, AveragingArea = 4.0 * SquareCentimetre,
            Origin = "limits and time read in a textbook's reprint of table 6; areas from memory",
            Remarks = "above 30 GHz also twice as much over 1 cm²",
        },
        new("icnirp-2020-body-public", "ICNIRP 2020, whole body, public", Gigahertz(2.0, 300.0), Always(10.0), Always(30.0 * Minute))
        {
            Instrument = Icnirp2020, Group = ExposureGroup.Public, Origin = FromMemory,
        },
        new("icnirp-2020-body-workers", "ICNIRP 2020, whole body, workers", Gigahertz(2.0, 300.0), Always(50.0), Always(30.0 * Minute))
        {
            Instrument = Icnirp2020, Group = ExposureGroup.Workers, Origin = FromMemory,
        },
        new("icnirp-1998-public", "ICNIRP 1998, public", Gigahertz(2.0, 300.0), Always(10.0), AveragingTime1998)
        {
            Instrument = Icnirp1998, Group = ExposureGroup.Public, AveragingArea = 20.0 * SquareCentimetre, ReplacedBy = Replaced1998,
            Origin = "10 W/m² at 10 to 300 GHz read in a copy of an ITU report; the rest from memory",
            Remarks = "also 61 V/m; over 1 cm² up to twenty times as much",
        },
        new("icnirp-1998-workers", "ICNIRP 1998, workers", Gigahertz(2.0, 300.0), Always(50.0), AveragingTime1998)
        {
            Instrument = Icnirp1998, Group = ExposureGroup.Workers, AveragingArea = 20.0 * SquareCentimetre, ReplacedBy = Replaced1998,
            Origin = "50 W/m² at 10 to 300 GHz read in a copy of an ITU report; the rest from memory",
            Remarks = "also 137 V/m; over 1 cm² up to twenty times as much",
        },
        new("ieee-2019-body-public", "IEEE C95.1-2019, whole body, public", Gigahertz(2.0, 300.0), Always(10.0), Always(30.0 * Minute))
        {
            Instrument = Ieee, Group = ExposureGroup.Public, Origin = FromMemory, Remarks = "its own word is \"unrestricted environment\"",
        },
        new("ieee-2019-body-workers", "IEEE C95.1-2019, whole body, workers", Gigahertz(2.0, 300.0), Always(50.0), Always(30.0 * Minute))
        {
            Instrument = Ieee, Group = ExposureGroup.Workers, Origin = FromMemory, Remarks = "its own word is \"restricted environment\"",
        },
        new("ieee-2019-local-public", "IEEE C95.1-2019, local, public", Gigahertz(6.0, 300.0), f => Falling(f, 55.0), Always(6.0 * Minute))
        {
            Instrument = Ieee, Group = ExposureGroup.Public, AveragingArea = 4.0 * SquareCentimetre, Origin = FromMemory,
        },
        new("ieee-2019-local-workers", "IEEE C95.1-2019, local, workers", Gigahertz(6.0, 300.0), f => Falling(f, 275.0), Always(6.0 * Minute))
        {
            Instrument = Ieee, Group = ExposureGroup.Workers, AveragingArea = 4.0 * SquareCentimetre, Origin = FromMemory,
        },
    ];

    // Flat from 2 to 6 GHz, where the falling formula takes over with a step of 0.1 %.
    private static double Local2020(double frequency, double coefficient, double flat) =>
        frequency <= 6e9 ? flat : Falling(frequency, coefficient);

    private static double Falling(double frequency, double coefficient) => coefficient * Math.Pow(frequency / 1e9, -0.177);
}
