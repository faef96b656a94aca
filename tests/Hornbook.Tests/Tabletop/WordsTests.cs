using Hornbook.Bench.Findings;
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

    [Fact]
    public void Numbers_on_the_wall_keep_their_units_on_one_line() => Assert.Equal(
        "Set it to x\u00a0=\u00a030\u00a0cm: 626\u00a0Hz, 12\u00a0dB, about 590 just-noticeable steps at 0° to 13° in 4 moves.",
        Words.Bound("Set it to x = 30 cm: 626 Hz, 12 dB, about 590 just-noticeable steps at 0° to 13° in 4 moves."));

    [Theory]
    [InlineData(0, 0, null)]
    [InlineData(1, 0, "1 thing spoils the show")]
    [InlineData(0, 1, "1 thing weakens the show")]
    [InlineData(2, 1, "2 things spoil the show, 1 weakens it")]
    [InlineData(1, 3, "1 thing spoils the show, 3 weaken it")]
    public void What_stands_in_the_way_is_counted_and_notes_are_not(int spoils, int weakens, string? said) => Assert.Equal(
        said,
        Words.Count(
        [
            .. Enumerable.Repeat(Of(Severity.Spoils), spoils),
            .. Enumerable.Repeat(Of(Severity.Weakens), weakens),
            Of(Severity.Note),
        ]));

    private static Finding Of(Severity severity) => new(severity, "any", "Wrong.", "So.", null);
}
