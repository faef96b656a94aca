using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Editing;
using Hornbook.Tabletop.Desk;
using Hornbook.Tabletop.Keeping;
using Hornbook.Tests.Tabletop.Desk;
using Xunit;

namespace Hornbook.Tests.Tabletop.Keeping;

public sealed class BenchKeeperTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("hornbook-keeper");
    private readonly string _path;
    private readonly BenchDesk _desk;
    private readonly BenchKeeper _keeper;

    public BenchKeeperTests()
    {
        _path = Path.Combine(_folder.FullName, "mine.toml");
        File.WriteAllText(_path, ExampleBench.File.Text);
        _desk = new BenchDesk(BenchFile.Read(_path));
        _keeper = new BenchKeeper(_desk, new BenchHome(_path, _path), new HandClock());
    }

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void What_is_done_on_the_page_is_written_and_all_else_in_the_file_stays()
    {
        Here("receiver.x", "1.1 m");
        _keeper.Announce();
        Assert.IsType<Kept.Pending>(_keeper.State);
        _keeper.Settle();
        Assert.IsType<Kept.Safe>(_keeper.State);
        Assert.Equal(ExampleBench.File.Text.Replace("x = \"1.2 m\"", "x = \"1.1 m\"", StringComparison.Ordinal), InFile);
        Assert.Equal([_path], Files);
    }

    [Fact]
    public void What_an_editor_writes_comes_onto_the_desk_and_can_be_undone()
    {
        Outside(text => text.Replace("gain = 1000", "gain = 500", StringComparison.Ordinal) + "\n# turned down\n");
        _keeper.Settle();
        Assert.Equal(500.0, _desk.Now.Plan.Detection.Amplifier.Gain); // derived: as written above
        _desk.Undo();
        _keeper.Settle();
        Assert.Equal(ExampleBench.File.Text, InFile);
    }

    [Fact]
    public void Both_sides_changes_come_together_where_they_are_of_different_keys()
    {
        Here("receiver.x", "1.1 m");
        Outside(text => text.Replace("gain = 1000", "gain = 500", StringComparison.Ordinal) + "\n# turned down\n");
        _keeper.Settle();
        Assert.IsType<Kept.Safe>(_keeper.State);
        Assert.Contains("x = \"1.1 m\"", InFile, StringComparison.Ordinal);
        Assert.Contains("gain = 500", InFile, StringComparison.Ordinal);
        Assert.EndsWith("# turned down\n", InFile, StringComparison.Ordinal);
        Assert.Equal(InFile, _desk.Now.File.Text);
    }

    [Theory]
    [InlineData(true, "1.1 m", "95 cm")]
    [InlineData(false, "95 cm", "1.1 m")]
    public void The_same_key_changed_on_both_sides_is_for_a_person_and_the_other_version_is_kept(bool ours, string chosen, string aside)
    {
        Dispute();
        Assert.Contains("x = \"95 cm\"", InFile, StringComparison.Ordinal); // neither side is touched before the choice
        _keeper.Choose(ours);
        Assert.IsType<Kept.Safe>(_keeper.State);
        Assert.Contains($"x = \"{chosen}\"", InFile, StringComparison.Ordinal);
        Assert.Equal(InFile, _desk.Now.File.Text);
        Assert.Contains($"x = \"{aside}\"", File.ReadAllText(_keeper.SetAside!), StringComparison.Ordinal);
        // The clock of the test stands at the beginning of 1970, in the zone of the machine.
        Assert.Matches(@"^mine-set-aside-(1970-01-01|1969-12-31)-\d{6}\.toml$", Path.GetFileName(_keeper.SetAside));
    }

    [Fact]
    public void A_choice_that_comes_after_another_change_is_asked_again()
    {
        Dispute();
        Outside(text => text.Replace("x = \"95 cm\"", "x = \"90 cm\"", StringComparison.Ordinal));
        _keeper.Choose(ours: true);
        Kept.Disputed again = Assert.IsType<Kept.Disputed>(_keeper.State);
        Assert.Equal("90 cm", Assert.Single(again.Merge.Conflicts).Theirs);
    }

    [Fact]
    public void A_dispute_that_outlasts_the_program_is_kept_on_both_sides()
    {
        Dispute();
        _keeper.Close();
        Assert.Contains("x = \"95 cm\"", InFile, StringComparison.Ordinal);
        Assert.Equal(_desk.Now.File.Text, File.ReadAllText(_keeper.SetAside!));
    }

    [Fact]
    public void A_file_left_wrong_by_an_editor_is_not_written_over_and_is_taken_in_once_it_is_mended()
    {
        Here("receiver.x", "1.1 m");
        Outside(text => text.Replace("gain = 1000", "gain = ", StringComparison.Ordinal));
        _keeper.Settle();
        Assert.StartsWith("line ", Assert.IsType<Kept.Unusable>(_keeper.State).Why, StringComparison.Ordinal);
        Assert.DoesNotContain("x = \"1.1 m\"", InFile, StringComparison.Ordinal);
        Outside(text => text.Replace("gain = ", "gain = 800", StringComparison.Ordinal));
        _keeper.Settle();
        Assert.IsType<Kept.Safe>(_keeper.State);
        Assert.Contains("x = \"1.1 m\"", InFile, StringComparison.Ordinal);
        Assert.Equal(800.0, _desk.Now.Plan.Detection.Amplifier.Gain); // derived: as written above
    }

    [Fact]
    public void A_file_that_cannot_be_written_keeps_the_moves_on_the_desk_until_it_can()
    {
        Here("receiver.x", "1.1 m");
        File.SetAttributes(_path, FileAttributes.ReadOnly);
        _keeper.Settle();
        Assert.Contains("read-only", Assert.IsType<Kept.Failed>(_keeper.State).Why, StringComparison.Ordinal);
        Assert.Equal(ExampleBench.File.Text, InFile);
        File.SetAttributes(_path, FileAttributes.Normal);
        _keeper.Settle();
        Assert.IsType<Kept.Safe>(_keeper.State);
        Assert.Contains("x = \"1.1 m\"", InFile, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_was_taken_away_is_written_again()
    {
        File.Delete(_path);
        _keeper.Settle();
        Assert.Equal(ExampleBench.File.Text, InFile);
    }

    [Fact]
    public void An_example_stays_as_it_is_and_its_copy_comes_with_the_first_change()
    {
        string copy = Path.Combine(_folder.FullName, "benches", "mine.toml");
        BenchKeeper keeper = new(_desk, new BenchHome(_path, copy));
        keeper.Settle();
        Assert.IsType<Kept.Untouched>(keeper.State);
        Assert.False(File.Exists(copy));
        Here("receiver.x", "1.1 m");
        keeper.Settle();
        Assert.Equal(_desk.Now.File.Text, File.ReadAllText(copy));
        Assert.Equal(ExampleBench.File.Text, InFile);
        _desk.Undo();
        keeper.Settle();
        Assert.Equal(ExampleBench.File.Text, File.ReadAllText(copy));
    }

    private string InFile => File.ReadAllText(_path);

    private string[] Files => Directory.GetFiles(_folder.FullName);

    private void Here(string key, string text) => Assert.Null(_desk.Edit("changing", [BenchChange.ToText(key, text)]));

    private void Outside(Func<string, string> edit) => File.WriteAllText(_path, edit(InFile));

    private void Dispute()
    {
        Here("receiver.x", "1.1 m");
        Outside(text => text.Replace("x = \"1.2 m\"", "x = \"95 cm\"", StringComparison.Ordinal));
        _keeper.Settle();
        Assert.IsType<Kept.Disputed>(_keeper.State);
    }
}
