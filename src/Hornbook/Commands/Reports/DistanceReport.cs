using Hornbook.Bench.Demonstrations;
using Hornbook.Commands.Printing;

namespace Hornbook.Commands.Reports;

/// <summary>The distance law that the bench will show.</summary>
internal sealed record DistanceReport(
    double Exponent,
    double ApparentOriginM,
    double ResidualDb,
    double MouthExponent,
    double InverseSquareOriginM,
    IReadOnlyList<TextbookReport> Textbook) : EvaluationReport
{
    private const int RowsShown = 8;

    internal static DistanceReport Of(DistanceEvaluation e) => new(
        e.Exponent, e.ApparentOrigin, e.ResidualDb, e.MouthExponent, e.InverseSquareOrigin, [.. e.Textbook.Select(TextbookReport.Of)]);

    /// <inheritdoc/>
    internal override void Describe(TextPage page)
    {
        TextTable table = new(string.Empty, string.Empty, string.Empty);
        table.Row("Exponent", Show.Fixed(MouthExponent, 2), "by ruler from mouth to mouth; the books say 2");
        table.Row("  with free origin", Show.Fixed(Exponent, 2), $"the waves seem to begin {Show.Length(ApparentOriginM)} behind the mouths, both together");
        table.Row("  for exactly 2", Show.Length(InverseSquareOriginM), "has to be added to what the ruler says");
        page.Table(table);
        page.Gap();
        TextTable books = new(">distance", ">link [dB]", ">Friis is off by", ">inverse square is off by");
        foreach (TextbookReport row in Thinned.Of(Textbook, RowsShown))
        {
            books.Row(Show.Length(row.DistanceM), Show.Fixed(row.LinkDb, 1), Show.Db(row.FriisErrorDb), Show.Db(row.InverseSquareErrorDb));
        }

        page.Table(books);
        TextbookReport first = Textbook[0];
        page.Paragraph($"2D²/λ is {Show.Length(first.SourceFarZoneM)} for the source's antenna and {Show.Length(first.ReceiverFarZoneM)} for the receiver's; Friis is still off by {Show.FineDb(first.FarZoneErrorDb)} at the greater of them.");
    }
}
