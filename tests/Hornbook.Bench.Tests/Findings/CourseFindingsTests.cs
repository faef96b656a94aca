using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

public sealed class CourseFindingsTests
{
    [Fact]
    public void A_distance_law_that_leaves_the_table_is_ended_at_its_edge()
    {
        // The source stands at 0.3 m on a table of 2.2 m: 1.9 m are left, derived.
        Finding finding = Checking.The("course-leaves-table", With(1.0, 2.2));
        Assert.Equal(Severity.Weakens, finding.Severity);
        Assert.Contains("30 cm beyond", finding.Wrong);
        Assert.Equal(("demonstrations.distance.to", "1.9 m"), (finding.Mend!.Key, finding.Mend.NewText));
        Checking.None("course-leaves-table", With(1.0, 1.9));
    }

    [Fact]
    public void One_that_never_is_on_the_table_is_spoilt() =>
        Assert.Equal(Severity.Spoils, Checking.The("course-leaves-table", With(2.0, 3.0)).Severity);

    private static BenchPlan With(double from, double to) => Checking.Good with
    {
        Demonstrations = [GoodBench.Distance with { From = from, To = to, Points = 13 }],
    };
}
