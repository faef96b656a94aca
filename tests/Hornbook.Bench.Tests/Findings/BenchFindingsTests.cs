using System.Globalization;
using System.Text;
using Hornbook.Bench.Findings;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

public sealed class BenchFindingsTests
{
    [Fact]
    public void Nothing_spoils_or_weakens_a_good_bench() =>
        Assert.DoesNotContain(BenchFindings.Of(GoodBench.Plan, cancellation: TestContext.Current.CancellationToken), f => f.Severity < Severity.Note);

    [Fact]
    public void Says_in_plain_words_what_there_is_to_know_of_a_good_bench()
    {
        StringBuilder text = new();
        foreach (Finding finding in BenchFindings.Of(GoodBench.Plan, cancellation: TestContext.Current.CancellationToken))
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"{finding.Severity}: {finding.Id}").AppendLine(finding.Wrong).AppendLine(finding.Consequence);
            text.AppendLine(finding.Mend?.Move ?? "(nothing to mend)").AppendLine();
        }

        Approve.Text(text.ToString(), Repository.At("tests", "Hornbook.Bench.Tests", "Findings", "GoodBench.approved.txt"));
    }
}
