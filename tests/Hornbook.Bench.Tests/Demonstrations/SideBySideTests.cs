using Hornbook.Bench.Demonstrations;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations;

public static class SideBySideTests
{
    private static readonly int[] Numbers = [.. Enumerable.Range(0, 100)];

    [Fact]
    public static void Results_come_in_the_order_of_the_things() =>
        Assert.Equal(Numbers.Select(n => 2 * n), SideBySide.Each(Numbers, n => 2 * n, TestContext.Current.CancellationToken));

    // A page shows what such an exception says: it must be that one, however many are at work.
    [Fact]
    public static void What_one_refuses_is_refused_as_if_it_were_alone() =>
        Assert.Equal("no", Assert.Throws<ArgumentException>(() => SideBySide.Each(Numbers, n => SideBySide.Each(Numbers, Refused, TestContext.Current.CancellationToken), TestContext.Current.CancellationToken)).Message);

    private static int Refused(int number) => number == 50 ? throw new ArgumentException("no") : number;
}
