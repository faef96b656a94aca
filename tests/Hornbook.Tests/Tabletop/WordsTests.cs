using Hornbook.Tabletop;
using Xunit;

namespace Hornbook.Tests.Tabletop;

public sealed class WordsTests
{
    [Fact]
    public void A_turn_is_said_as_a_person_would()
    {
        Assert.Equal("22.5° to the left", Words.Turned(Math.PI / 8.0));
        Assert.Equal("90° to the right", Words.Turned(-Math.PI / 2.0));
        Assert.Equal("straight along the bench", Words.Turned(0.0));
        Assert.Equal("level", Words.Tilted(0.0));
        Assert.Equal("45° clockwise seen from behind", Words.Rolled(Math.PI / 4.0));
    }

    [Fact]
    public async Task The_keep_out_distance_names_its_limit()
    {
        BenchSession session = ExampleBench.Session();
        Assert.StartsWith("Computing", Words.KeepOut(session), StringComparison.Ordinal);
        await session.Advice.CompleteAsync();
        Assert.Contains(session.Advice.Limit!.Title, Words.KeepOut(session), StringComparison.Ordinal);
        Assert.Contains(Shown.Clearance(session.Advice.KeepOut!.OnAxis, LengthUnit.Centimetre).ToString(), Words.KeepOut(session), StringComparison.Ordinal);
    }
}
