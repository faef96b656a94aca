using Hornbook.Physics;
using Hornbook.Physics.Antennas;

namespace Hornbook.Commands.Reports;

/// <summary>What is left of the gain at a distance on the axis.</summary>
internal sealed record NearGainReport(double DistanceM, double GainDbi)
{
    internal static NearGainReport Of(Antenna antenna, double distance) =>
        new(distance, Decibels.FromRatio(NearZoneGain.OnAxis(antenna, distance)));
}
