using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Editing;
using Hornbook.Tabletop.Desk;
using Xunit;

namespace Hornbook.Tests.Tabletop.Desk;

public sealed class BenchDeskTests
{
    private readonly HandClock _clock = new();
    private readonly BenchDesk _desk;

    public BenchDeskTests() => _desk = new BenchDesk(ExampleBench.File, _clock);

    [Fact]
    public void A_step_keeps_every_other_character_of_the_file()
    {
        Assert.Null(_desk.Edit("moving", [BenchChange.ToText("receiver.x", "1.1 m")]));
        Assert.Equal(ExampleBench.File.Text.Replace("x = \"1.2 m\"", "x = \"1.1 m\"", StringComparison.Ordinal), _desk.Now.File.Text);
        _desk.Undo();
        Assert.Equal(ExampleBench.File.Text, _desk.Now.File.Text);
    }

    [Fact]
    public void What_changes_nothing_is_no_step()
    {
        _desk.Changed += () => Assert.Fail("nothing changed");
        Assert.Null(_desk.Edit("moving", [BenchChange.ToText("receiver.x", "1.2 m")]));
        Assert.False(_desk.Now.History.CanUndo);
    }

    [Theory]
    [InlineData("receiver.x", "here")]
    [InlineData("frequency", "5 GHz")] // below the guides' cutoff
    [InlineData("antennas.trumpet.length", "1 cm")]
    public void What_cannot_be_is_refused_with_its_reason_and_nothing_changes(string key, string text)
    {
        Assert.NotEmpty(_desk.Edit("trying", [BenchChange.ToText(key, text)])!);
        Assert.Equal(ExampleBench.File.Text, _desk.Now.File.Text);
        Assert.False(_desk.Now.History.CanUndo);
    }

    [Fact]
    public void A_key_held_down_is_one_step_and_a_pause_begins_another()
    {
        Press("1.19 m");
        Press("1.18 m");
        _clock.Pass(TimeSpan.FromSeconds(3.0));
        Press("1.17 m");
        _desk.Undo();
        Assert.Equal(1.18, _desk.Now.Plan.Receiver.Pose.Position.X); // derived: where the first run ended
        _desk.Undo();
        Assert.Equal(1.2, _desk.Now.Plan.Receiver.Pose.Position.X); // derived: where the example stands
        Assert.False(_desk.Now.History.CanUndo);
    }

    [Fact]
    public void A_file_that_is_wrong_does_not_get_onto_the_desk()
    {
        BenchFile wrong = BenchFile.Parse("title = 3", "wrong.toml");
        Assert.NotNull(BenchDesk.Refusal(wrong));
        Assert.False(_desk.Replace("opening", wrong, _desk.Now.File));
        Assert.Equal(ExampleBench.File.Text, _desk.Now.File.Text);
    }

    [Fact]
    public void Nothing_newer_is_replaced_unseen()
    {
        BenchFile seen = _desk.Now.File;
        Press("1.19 m");
        Assert.False(_desk.Replace("opening", ExampleBench.File.Edit(BenchChange.ToText("receiver.x", "1 m")), seen));
        Assert.Equal(1.19, _desk.Now.Plan.Receiver.Pose.Position.X); // derived: where the key put it
    }

    private void Press(string where) => Assert.Null(_desk.Edit("moving", [BenchChange.ToText("receiver.x", where)], "arrow"));
}
