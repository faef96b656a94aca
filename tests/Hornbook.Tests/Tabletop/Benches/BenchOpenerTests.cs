using Hornbook.Bench.Beginnings;
using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Editing;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Benches;
using Hornbook.Tabletop.Keeping;
using Xunit;

namespace Hornbook.Tests.Tabletop.Benches;

public sealed class BenchOpenerTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("hornbook-opener");
    private readonly Workplace _place;

    public BenchOpenerTests()
    {
        Write("first.toml", ExampleBench.File.Text);
        Write("second.toml", ExampleBench.File.Text.Replace("Evening bench", "Second bench", StringComparison.Ordinal));
        _place = new Workplace(BenchFile.Read(At("first.toml")), new BenchHome(At("first.toml"), At("first.toml")));
    }

    public void Dispose()
    {
        _place.Dispose();
        _folder.Delete(recursive: true);
    }

    [Fact]
    public void Another_bench_comes_onto_the_desk_once_the_first_is_saved_and_every_window_follows()
    {
        using BenchSession window = new(_place.Desk, _place.Advice);
        Move("1.1 m");
        Assert.Null(_place.Opener.Open("second.toml"));
        Assert.Contains("x = \"1.1 m\"", File.ReadAllText(At("first.toml")), StringComparison.Ordinal);
        Assert.Equal("Second bench", window.Plan.Title);
        Assert.False(window.History.CanUndo);
        Assert.True(window.StandsAsOpened);
        Assert.True(_place.Opener.IsOpen("second.toml"));
        Assert.False(_place.Opener.IsOpen("first.toml"));
    }

    [Fact]
    public void What_is_done_next_is_kept_in_the_file_of_that_bench()
    {
        string before = File.ReadAllText(At("first.toml"));
        _place.Opener.Open("second.toml");
        Move("1.3 m");
        _place.Keeper.Settle();
        Assert.Equal(before, File.ReadAllText(At("first.toml")));
        Assert.Contains("x = \"1.3 m\"", File.ReadAllText(At("second.toml")), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_in_a_hand_of_the_bench_before_does_not_move_the_next()
    {
        using BenchSession window = new(_place.Desk, _place.Advice) { OnOwnThread = static _ => { } };
        window.Place(Hornbook.Bench.Demonstrations.BenchEnd.Receiver, window.Receiver.Pose with { Turn = 1.0 }); // derived: anywhere else
        _place.Opener.Open("second.toml");
        window.Release();
        Assert.Equal(_place.Desk.Opened.File, _place.Desk.Now.File);
    }

    [Fact]
    public void A_bench_whose_changes_cannot_be_saved_is_not_left()
    {
        Move("1.1 m");
        File.WriteAllText(At("first.toml"), "this is no bench");
        Assert.NotNull(_place.Opener.Open("second.toml"));
        Assert.Equal("Evening bench", _place.Desk.Now.Plan.Title);
        Assert.IsType<Kept.Unusable>(_place.Keeper.State);
    }

    [Theory]
    [InlineData("../first.toml")]
    [InlineData("third.toml")]
    [InlineData("broken.toml")]
    public void A_file_that_is_not_there_or_wrong_is_not_opened(string name)
    {
        Write("broken.toml", "format = 1");
        Assert.NotNull(_place.Opener.Open(name));
        Assert.Equal("Evening bench", _place.Desk.Now.Plan.Title);
    }

    [Fact]
    public void An_example_is_kept_in_a_copy_under_a_free_name_from_the_first_move_on()
    {
        Write(ExampleBench.Name, "# somebody's own");
        Assert.Null(_place.Opener.OpenExample(ExampleBench.Name));
        Move("1.1 m");
        _place.Keeper.Settle();
        Assert.Equal("# somebody's own", File.ReadAllText(At(ExampleBench.Name)));
        Assert.Contains("x = \"1.1 m\"", File.ReadAllText(At("evening-bench-2.toml")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_copy_of_the_bench_on_the_desk_has_what_lies_there()
    {
        Move("1.1 m");
        Assert.Null(_place.Opener.Copy("first.toml", "third"));
        Assert.Contains("x = \"1.1 m\"", File.ReadAllText(At("third.toml")), StringComparison.Ordinal);
        Assert.NotNull(_place.Opener.Copy("first.toml", "third"));
        Assert.NotNull(_place.Opener.Copy("first.toml", "../third"));
        Assert.NotNull(_place.Opener.Copy("gone.toml", "fourth"));
    }

    [Fact]
    public void A_bench_from_five_answers_lies_on_the_desk_and_in_the_folder()
    {
        FirstAnswers answers = new() { Name = "mine" };
        Assert.True(answers.TryRead(out BenchWish? wish, out _));
        Assert.True(BenchName.TryRead(answers.Name, out BenchName? name, out _));
        FirstBench bench = FirstBench.Of(name.Stem, wish);
        Assert.Null(_place.Opener.Begin(name, bench.File!));
        Assert.Equal("mine", _place.Desk.Now.Plan.Title);
        Assert.Equal(bench.File!.Text, File.ReadAllText(At("mine.toml")));
    }

    private void Move(string x) => Assert.Null(_place.Desk.Edit("moving", [BenchChange.ToText("receiver.x", x)]));

    private string At(string name) => Path.Combine(_folder.FullName, name);

    private void Write(string name, string text) => File.WriteAllText(At(name), text);
}
