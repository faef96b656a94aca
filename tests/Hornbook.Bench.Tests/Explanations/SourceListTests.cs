using Hornbook.Bench.Explanations;
using Xunit;

namespace Hornbook.Bench.Tests.Explanations;

public sealed class SourceListTests
{
    [Fact]
    public void A_key_is_written_out() => Assert.StartsWith("H. T. Friis, ", SourceList.Find("Friis1946"), StringComparison.Ordinal);

    [Fact]
    public void What_is_not_in_the_list_stays_as_it_is() => Assert.Equal("Nobody1900", SourceList.Find("Nobody1900"));
}
