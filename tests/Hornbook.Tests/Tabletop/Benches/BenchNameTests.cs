using CsCheck;
using Hornbook.Tabletop.Benches;
using Xunit;

namespace Hornbook.Tests.Tabletop.Benches;

public sealed class BenchNameTests
{
    [Theory]
    [InlineData("evening", "evening.toml")]
    [InlineData(" my bench 2.toml ", "my bench 2.toml")]
    [InlineData("Hörnchen_für-alle", "Hörnchen_für-alle.toml")]
    [InlineData("EVENING.TOML", "EVENING.toml")]
    public void A_plain_name_is_taken(string typed, string file)
    {
        Assert.True(BenchName.TryRead(typed, out BenchName? name, out _));
        Assert.Equal(file, name.FileName);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData(".toml")]
    [InlineData("..")]
    [InlineData("../evening")]
    [InlineData("..\\evening")]
    [InlineData("a/../../b")]
    [InlineData("/etc/passwd")]
    [InlineData("C:\\bench")]
    [InlineData("C:bench")]
    [InlineData("~/bench")]
    [InlineData(".hidden")]
    [InlineData("a\0b")]
    [InlineData("line\nbreak")]
    [InlineData("bench\n.toml")]
    [InlineData("bench:stream")]
    [InlineData("bench.toml.exe")]
    [InlineData("bench-")]
    [InlineData("-bench")]
    [InlineData("con")]
    [InlineData("NUL.toml")]
    [InlineData("Com1")]
    [InlineData("lpt9")]
    [InlineData("COM¹")]
    [InlineData("right\u202Eleft")]
    [InlineData("full\uFF0Fwidth")]
    public void What_could_lead_elsewhere_or_means_something_else_is_not(string? typed)
    {
        Assert.False(BenchName.TryRead(typed, out BenchName? name, out string? wrong));
        Assert.Null(name);
        Assert.NotEmpty(wrong);
    }

    [Fact]
    public void A_name_has_an_end() => Assert.False(BenchName.TryRead(new string('a', 61), out _, out _)); // derived: one more than the 60 that are allowed

    [Fact]
    public void Whatever_is_typed_stays_in_the_folder() => Gen.String.Sample(typed =>
    {
        if (BenchName.TryRead(typed, out BenchName? name, out _))
        {
            string folder = Path.GetFullPath("benches");
            Assert.Equal(folder, Path.GetDirectoryName(Path.GetFullPath(Path.Combine(folder, name.FileName))));
        }
    });
}
