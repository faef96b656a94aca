using Hornbook.Commands.Reports;
using Xunit;

namespace Hornbook.Tests.Commands;

public sealed class ThinnedTests
{
    // derived: 120 steps in at most 18 are 8 or 10 apart; only 10 meets the middle.
    [Fact]
    public void Ends_and_middle_are_kept_and_the_rest_is_evenly_spaced() =>
        Assert.Equal([0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 110, 120], Thinned.Of([.. Enumerable.Range(0, 121)], 19));

    [Fact]
    public void A_short_list_stays_whole() => Assert.Equal([1, 2, 3], Thinned.Of([1, 2, 3], 3));

    [Theory]
    [InlineData(20)]
    [InlineData(98)]
    [InlineData(361)]
    [InlineData(1000)]
    public void There_are_never_more_than_asked_for_and_the_ends_are_among_them(int count)
    {
        IReadOnlyList<int> some = Thinned.Of([.. Enumerable.Range(0, count)], 19);
        Assert.InRange(some.Count, 2, 19);
        Assert.Equal((0, count - 1), (some[0], some[^1]));
    }
}
