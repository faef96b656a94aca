using Hornbook.Bench.Demonstrations;
using Hornbook.Physics;

namespace Hornbook.Commands.Reports;

/// <summary>What textbook formulas would have said, and how wrong each would be here.</summary>
internal sealed record TextbookReport(
    double DistanceM,
    double LinkDb,
    double FriisLinkDb,
    double FriisErrorDb,
    double InverseSquareLinkDb,
    double InverseSquareErrorDb,
    double SourceFarZoneM,
    double ReceiverFarZoneM,
    double FarZoneErrorDb)
{
    internal static TextbookReport Of(TextbookComparison c) => new(
        c.Distance,
        Decibels.FromRatio(c.Link),
        Decibels.FromRatio(c.FriisLink),
        c.FriisErrorDb,
        Decibels.FromRatio(c.InverseSquareLink),
        c.InverseSquareErrorDb,
        c.SourceFarZone,
        c.ReceiverFarZone,
        c.FarZoneErrorDb);
}
