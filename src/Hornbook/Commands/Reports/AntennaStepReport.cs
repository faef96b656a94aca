using Hornbook.Bench.Demonstrations;

namespace Hornbook.Commands.Reports;

/// <summary>One antenna of a change of antennas.</summary>
internal sealed record AntennaStepReport(
    string Antenna, double GainDbi, double RealisedGainDbi, double ReceivedDb, double PromisedDb, double ErrorDb)
{
    internal static AntennaStepReport Of(AntennaStep s) => new(s.Antenna, s.GainDb, s.RealisedGainDb, s.ReceivedDb, s.PromisedDb, s.ErrorDb);
}
