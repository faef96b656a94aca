using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Editing;
using Hornbook.Bench.Findings;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

public sealed class MendTests
{
    private static readonly BenchFile Shipped = BenchFile.Read(Repository.At("examples", "evening-bench.toml"));

    /// <summary>The same with few points a curve, which is enough to look it over.</summary>
    private static readonly BenchFile Example = Shipped.Edit(
        Shipped.Plan!.Demonstrations.Where(d => d is not AntennaChangeDemonstration).Select(d => BenchChange.ToText($"demonstrations.{d.Name}.points", "15")));

    [Theory]
    [MemberData(nameof(Examples))]
    public void Nothing_spoils_an_example_bench(string file) => Assert.DoesNotContain(
        Checking.Check(BenchFile.Read(Repository.At("examples", file)).Plan!), f => f.Severity == Severity.Spoils);

    public static TheoryData<string> Examples() =>
        [.. Directory.GetFiles(Repository.At("examples"), "*.toml").Select(path => Path.GetFileName(path))];

    [Theory]
    [InlineData("amplifier.gain", "5000", "tone-clipped")]
    [InlineData("amplifier.gain", "2", "pitch-range-small")]
    [InlineData("amplifier.offset", "-7 V", "tone-at-bottom")]
    [InlineData("source.turn", "15 deg", "not-facing")]
    [InlineData("source.tilt", "-20 deg", "not-facing")]
    [InlineData("receiver.roll", "80 deg", "polarisation-crossed")]
    [InlineData("receiver.x", "2 m", "off-table")]
    [InlineData("receiver.y", "-40 cm", "off-table")]
    [InlineData("receiver.z", "2 mm", "antenna-too-low")]
    [InlineData("source.worst_case_power", "300 mW", "edge-inside-keep-out")]
    [InlineData("demonstrations.distance-law.to", "1.7 m", "course-leaves-table")]
    [InlineData("tone.slope", "2 Hz/V", "pitch-range-small")]
    [InlineData("tone.slope", "-2 Hz/V", "pitch-range-small")]
    [InlineData("antennas.probe.guide", "WR-42", "guide-below-cutoff")]
    [InlineData("antennas.probe.guide", "WR-187", "guide-overmoded")]
    public void What_is_told_can_be_typed_into_the_file_and_mends_it(string key, string text, string id)
    {
        BenchFile spoilt = Example.Edit(BenchChange.ToText(key, text));
        Finding found = Checking.Check(spoilt.Plan!).First(f => f.Id == id);
        BenchFile mended = spoilt.Edit(BenchChange.ToText(found.Mend!.Key!, found.Mend.NewText!));
        Assert.Empty(mended.Problems);
        Assert.DoesNotContain(Checking.Check(mended.Plan!), f => f == found);
        Assert.DoesNotContain(Checking.Check(mended.Plan!), f => f.Id == id);
    }

    [Theory]
    [InlineData("receiver.x", "32 cm", "mouths-touch")]
    [InlineData("receiver.x", "75 cm", "near-zone")]
    [InlineData("receiver.x", "65 cm", "gain-misread")]
    [InlineData("receiver.turn", "80 deg", "not-trusted")]
    [InlineData("receiver.x", "62 cm", "receiver-inside-keep-out")]
    [InlineData("source.x", "5 cm", "antenna-overhangs")]
    [InlineData("demonstrations.polarisation.to", "40 deg", "null-not-reached")]
    [InlineData("demonstrations.beam-width.to", "4 deg", "half-power-not-reached")]
    public void One_move_that_sets_several_values_mends_it_and_brings_nothing_as_bad(string key, string text, string id)
    {
        BenchFile spoilt = Example.Edit(BenchChange.ToText(key, text));
        IReadOnlyList<Finding> before = Checking.Check(spoilt.Plan!);
        Finding found = before.First(f => f.Id == id);
        AssertMended(spoilt, before, found);
    }

    [Fact]
    public void Where_the_beam_would_sweep_over_people_the_receiver_is_turned_instead()
    {
        BenchFile sweeping = Example.Edit([BenchChange.ToText("demonstrations.beam-width.end", "source"), BenchChange.ToText("source.worst_case_power", "10 mW")]);
        IReadOnlyList<Finding> before = Checking.Check(sweeping.Plan!);
        AssertMended(sweeping, before, before.First(f => f.Id == "edge-swept"));
    }

    [Fact]
    public void A_panel_at_a_mouth_is_moved_away_from_it()
    {
        BenchFile bench = BenchFile.Parse(Example.Text + PlateAtTheSource(Example.Plan!.Source.Pose.Position), "plate.toml");
        IReadOnlyList<Finding> before = Checking.Check(bench.Plan!);
        AssertMended(bench, before, before.First(f => f.Id == "panel-at-mouth"));
    }

    [Fact]
    public void Low_axes_are_raised_together()
    {
        BenchFile low = Example.Edit([BenchChange.ToText("source.z", "15 cm"), BenchChange.ToText("receiver.z", "15 cm")]);
        IReadOnlyList<Finding> before = Checking.Check(low.Plan!);
        Finding bounce = before.First(f => f.Id == "table-bounce");
        Assert.StartsWith("Raise both axes", bounce.Mend!.Move, StringComparison.Ordinal);
        AssertMended(low, before, bounce);
    }

    [Fact]
    public void Two_large_horns_are_taken_apart_until_the_waves_between_them_are_weak()
    {
        BenchFile near = Example.Edit([BenchChange.ToText("receiver.x", "55 cm"), BenchChange.ToText("receiver.antenna", "large-horn")]);
        IReadOnlyList<Finding> before = Checking.Check(near.Plan!);
        AssertMended(near, before, before.First(f => f.Id == "standing-waves"));
    }

    private static void AssertMended(BenchFile spoilt, IReadOnlyList<Finding> before, Finding found)
    {
        BenchFile mended = spoilt.Edit([BenchChange.ToText(found.Mend!.Key!, found.Mend.NewText!), .. found.Mend.Also.Select(also => BenchChange.ToText(also.Key, also.NewText))]);
        Assert.Empty(mended.Problems);
        IReadOnlyList<Finding> after = Checking.Check(mended.Plan!);
        Assert.DoesNotContain(after, f => f.Id == found.Id);
        Assert.DoesNotContain(after, f => f.Severity < found.Severity && before.All(old => old.Id != f.Id));
    }

    // derived: 5 mm before the mouth, less than half a wavelength.
    private static string PlateAtTheSource(Physics.Vector mouth) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"""

        [panels.plate]
        kind = "metal plate"
        width = "6 cm"
        height = "6 cm"
        x = "{(100.0 * mouth.X) + 0.5} cm"
        y = "{100.0 * mouth.Y} cm"
        z = "{100.0 * mouth.Z} cm"
        """);
}
