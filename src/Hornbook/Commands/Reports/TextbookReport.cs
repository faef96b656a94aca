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
    double ReceiverFarZoneM)
{
    internal static TextbookReport Of(TextbookComparison c)
    {
        double link = Decibels.FromRatio(c.Link), friis = Decibels.FromRatio(c.FriisLink), square = Decibels.FromRatio(c.InverseSquareLink);
        return new TextbookReport(c.Distance, link, friis, friis - link, square, square - link, c.SourceFarZone, c.ReceiverFarZone);
    }
}
