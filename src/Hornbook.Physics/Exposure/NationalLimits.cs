using static Hornbook.Physics.Exposure.LimitTable;

namespace Hornbook.Physics.Exposure;

/// <summary>National limits for the public, precautionary ones among them.</summary>
internal static class NationalLimits
{
    private const double Day = 24.0 * 60.0 * Minute;
    private const string Switzerland = "Ordinance on protection from non-ionising radiation (ORNI/NISV) of 23 December 1999";

    internal static IReadOnlyList<ExposureLimit> All { get; } =
    [
        new("italy-limit-public", "Italy, exposure limit", Gigahertz(3.0, 300.0), Always(4.0), Always(6.0 * Minute))
        {
            Instrument = "DPCM of 8 July 2003", Group = ExposureGroup.Public, Origin = "read in a copy of the text",
            Remarks = "also 40 V/m and 0.1 A/m",
        },
        new("italy-attention-2024-public", "Italy, attention value and quality goal", Gigahertz(0.0001, 300.0), OfField(15.0), Always(Day))
        {
            Instrument = "Law 214 of 30 December 2023, from 30 April 2024", Group = ExposureGroup.Public, Origin = "read in a copy of the text",
            Remarks = "15 V/m, mean of a day, where people stay for more than four hours",
        },
        new("italy-attention-2003-public", "Italy, attention value and quality goal until 2024", Gigahertz(0.0001, 300.0), Always(0.1), Always(Day))
        {
            Instrument = "DPCM of 8 July 2003; mean of a day since Law 221 of 2012", Group = ExposureGroup.Public, Origin = "read in a copy of the text",
            ReplacedBy = "15 V/m since 30 April 2024 (Law 214 of 30 December 2023)",
            Remarks = "written as 6 V/m and 0.10 W/m²",
        },
        new("russia-public", "Russia, public", Gigahertz(0.3, 300.0), Always(0.1), Always(0.0))
        {
            Instrument = "Sanitary norms (SanPiN), table for radio frequencies", Group = ExposureGroup.Public,
            Origin = "read in regional copies of the table",
            Remarks = "written as 10 µW/cm²; the limits for workers are doses, not densities, and not kept here",
        },
        new("russia-scanning-public", "Russia, public, scanning antennas", Gigahertz(0.3, 300.0), Always(0.25), Always(0.0))
        {
            Instrument = "Sanitary norms (SanPiN), table for radio frequencies", Group = ExposureGroup.Public,
            Scope = LimitScope.ScanningAntennas, Origin = "read in regional copies of the table", Remarks = "written as 25 µW/cm²",
        },
        new("poland-2003-public", "Poland, public, until 2019", Gigahertz(0.3, 300.0), Always(0.1), Always(0.0))
        {
            Instrument = "Regulation of 30 October 2003", Group = ExposureGroup.Public,
            ReplacedBy = "61 V/m, 10 W/m² (regulation of 17 December 2019, in force since 2020)",
            Origin = "7 V/m and its change read in a draft notice; the rest from memory", Remarks = "also 7 V/m",
        },
        new("poland-2019-public", "Poland, public", Gigahertz(2.0, 300.0), Always(10.0), Always(6.0 * Minute))
        {
            Instrument = "Regulation of 17 December 2019, in force since 2020", Group = ExposureGroup.Public,
            Origin = FromMemory + " (a draft notice was read)", Remarks = "also 61 V/m",
        },
        new("switzerland-public", "Switzerland, exposure limit", Gigahertz(2.0, 300.0), OfField(61.0), Always(6.0 * Minute))
        {
            Instrument = Switzerland, Group = ExposureGroup.Public, Origin = "the two tiers read, the numbers from memory",
        },
        new("switzerland-installation-strict-public", "Switzerland, installation limit, strictest service", Gigahertz(0.3, 300.0), OfField(4.0), Always(0.0))
        {
            Instrument = Switzerland, Group = ExposureGroup.Public, Scope = LimitScope.FixedInstallations,
            Origin = "the two tiers read, the numbers from memory", Remarks = "4 to 6 V/m by service, at places of sensitive use",
        },
        new("switzerland-installation-public", "Switzerland, installation limit, other services", Gigahertz(0.3, 300.0), OfField(6.0), Always(0.0))
        {
            Instrument = Switzerland, Group = ExposureGroup.Public, Scope = LimitScope.FixedInstallations,
            Origin = "the two tiers read, the numbers from memory", Remarks = "4 to 6 V/m by service, at places of sensitive use",
        },
        new("china-2014-public", "China, public", Gigahertz(3.0, 300.0), f => f <= 15e9 ? f / 7500e6 : 2.0, Always(6.0 * Minute))
        {
            Instrument = "GB 8702-2014", Group = ExposureGroup.Public, Origin = FromMemory,
            Remarks = "f/7500 W/m² with f in MHz, also 0.22 √f V/m, to 15 GHz; then 2 W/m², 27 V/m",
        },
    ];
}
