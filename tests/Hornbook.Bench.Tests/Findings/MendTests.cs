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
    [InlineData("demonstrations.distance-law.from", "20 cm", "distance-law-bent")]
    [InlineData("source.tilt", "-90 deg", "not-facing")]
    public void One_move_that_sets_several_values_mends_it_and_brings_nothing_as_bad(string key, string text, string id)
    {
        BenchFile spoilt = Example.Edit(BenchChange.ToText(key, text));
        AssertMended(spoilt, id);
    }

    [Fact]
    public void Where_the_beam_would_sweep_over_people_the_receiver_is_turned_instead()
    {
        BenchFile sweeping = Example.Edit([BenchChange.ToText("demonstrations.beam-width.end", "source"), BenchChange.ToText("source.worst_case_power", "10 mW")]);
        AssertMended(sweeping, "edge-swept");
    }

    [Fact]
    public void A_panel_at_a_mouth_is_moved_away_from_it()
    {
        BenchFile bench = BenchFile.Parse(Example.Text + PlateAtTheSource(Example.Plan!.Source.Pose.Position), "plate.toml");
        AssertMended(bench, "panel-at-mouth");
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
        AssertMended(near, "standing-waves");
    }

    [Fact]
    public void Where_the_table_ends_behind_the_receiver_the_source_is_moved_back_too()
    {
        BenchFile small = Example.Edit([BenchChange.ToText("table.length", "1.2 m"), BenchChange.ToText("source.x", "70 cm"), BenchChange.ToText("receiver.x", "1.1 m")]);
        IReadOnlyList<Finding> before = Checking.Check(small.Plan!);
        Finding near = before.First(f => f.Id == "near-zone");
        Assert.StartsWith("Move the source back by ", near.Mend!.Move, StringComparison.Ordinal);
        AssertMended(small, before, near);
    }

    [Theory]
    [InlineData("1 mW", true)]
    [InlineData("6 mW", false)]
    public void The_source_is_not_moved_back_to_where_people_at_the_edge_behind_it_would_get_too_much(string power, bool moves)
    {
        BenchFile small = Example.Edit(
        [
            BenchChange.ToText("table.length", "70 cm"),
            BenchChange.ToText("source.antenna", "probe"),
            BenchChange.ToText("source.power", "1 mW"),
            BenchChange.ToText("source.worst_case_power", power),
            BenchChange.ToText("receiver.antenna", "large-horn"),
            BenchChange.ToText("receiver.x", "60 cm"),
        ]);
        Assert.Equal(moves, Checking.Check(small.Plan!).First(f => f.Id == "near-zone").Mend!.Key is not null);
    }

    [Fact]
    public void A_course_with_no_point_on_the_table_is_run_over_what_there_is_of_it()
    {
        BenchFile off = Example.Edit([BenchChange.ToText("demonstrations.distance-law.from", "1.6 m"), BenchChange.ToText("demonstrations.distance-law.to", "3.2 m")]);
        IReadOnlyList<Finding> before = Checking.Check(off.Plan!);
        Finding leaves = before.First(f => f.Id == "course-leaves-table");

        // derived: the source stands at 0.3 m on a table of 1.8 m, and 1.6 to 3.2 m is a ratio of two
        Assert.Equal(("75 cm", "1.5 m"), (leaves.Mend!.NewText, Assert.Single(leaves.Mend.Also).NewText));
        AssertMended(off, before, leaves);
    }

    [Fact]
    public void A_course_with_one_point_on_the_table_is_too()
    {
        BenchFile off = Example.Edit([BenchChange.ToText("demonstrations.distance-law.from", "1.49 m"), BenchChange.ToText("demonstrations.distance-law.to", "3 m")]);
        AssertMended(off, "course-leaves-table");
    }

    [Fact]
    public void A_beam_in_a_slanting_plane_is_swept_until_it_falls_to_half()
    {
        BenchFile slanting = Example.Edit(
            [BenchChange.ToText("source.roll", "30 deg"), BenchChange.ToText("receiver.roll", "-30 deg"), BenchChange.ToText("demonstrations.beam-width.to", "4 deg")]);
        AssertMended(slanting, "half-power-not-reached");
    }

    [Fact]
    public void Where_an_antenna_at_the_source_would_light_people_that_of_the_receiver_is_changed()
    {
        BenchFile changed = Example.Edit(
        [
            BenchChange.ToText("source.antenna", "small-horn"),
            BenchChange.ToText("source.worst_case_power", "40 mW"),
            BenchChange.ToText("source.x", "80 cm"),
            BenchChange.ToText("receiver.x", "1.6 m"),
            BenchChange.ToText("amplifier.gain", "100"),
            BenchChange.ToText("demonstrations.beam-width.end", "receiver"),
        ]);
        AssertMended(changed, "edge-swept");
    }

    [Fact]
    public void A_detector_that_gets_too_much_is_taken_away_from_the_source()
    {
        BenchFile strong = Example.Edit([BenchChange.ToText("source.power", "300 mW"), BenchChange.ToText("source.worst_case_power", "300 mW"), BenchChange.ToText("receiver.x", "60 cm")]);
        IReadOnlyList<Finding> before = Checking.Check(strong.Plan!);
        AssertMended(strong, before, before.First(f => f.Id == "detector-beyond-law" && f.Wrong.StartsWith("As it stands", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("strip grid", "strip_width", "19.8 mm")]
    [InlineData("strip grid", "strip_width", "0.2 mm")]
    [InlineData("wire grid", "wire_diameter", "8 mm")]
    public void A_grid_that_scatters_is_built_finer_with_the_same_share_of_metal(string kind, string key, string metal)
    {
        BenchFile coarse = BenchFile.Parse(Example.Text + $"""

            [panels.grid]
            kind = "{kind}"
            width = "15 cm"
            height = "15 cm"
            period = "20 mm"
            {key} = "{metal}"
            aside = true
            x = "80 cm"
            z = "40 cm"
            """, "grid.toml");
        Assert.Empty(coarse.Problems);
        IReadOnlyList<Finding> before = Checking.Check(coarse.Plan!);
        Finding scatters = before.First(f => f.Id == "grid-scatters");
        Assert.Equal("14 mm", scatters.Mend!.NewText); // derived: half of λ = 28.48 mm at 10.525 GHz, two digits of it
        AssertMended(coarse, before, scatters);
    }

    [Fact]
    public void A_panel_that_finds_no_place_between_the_mouths_is_laid_aside()
    {
        BenchFile bench = BenchFile.Parse(Example.Text + PlateAtTheSource(Example.Plan!.Source.Pose.Position), "plate.toml").Edit(BenchChange.ToText("receiver.x", "33 cm"));
        IReadOnlyList<Finding> before = Checking.Check(bench.Plan!);
        Finding near = before.First(f => f.Id == "panel-at-mouth");
        Assert.Equal(("panels.plate.aside", "true"), (near.Mend!.Key, near.Mend.NewText));
        BenchFile aside = bench.Edit(BenchChange.ToTruth(near.Mend.Key!, true));
        Assert.DoesNotContain(Checking.Check(aside.Plan!), f => f.Id == "panel-at-mouth");
    }

    [Fact]
    public void A_worst_case_below_the_power_brings_the_power_down_with_it()
    {
        BenchFile strong = Example.Edit([BenchChange.ToText("source.power", "300 mW"), BenchChange.ToText("source.worst_case_power", "300 mW")]);
        AssertMended(strong, "edge-inside-keep-out");
    }

    [Fact]
    public void The_source_is_not_turned_on_people_at_an_edge()
    {
        // Behind the source there are 30 cm of table, and its keep-out distance is 39 cm on the axis, as the README prints it.
        BenchFile behind = Example.Edit([BenchChange.ToText("receiver.x", "10 cm"), BenchChange.ToText("receiver.turn", "0 deg")]);
        Finding away = Checking.Check(behind.Plan!).First(f => f.Id == "not-facing");
        Assert.StartsWith("Turn the source to", away.Mend!.Move, StringComparison.Ordinal);
        Assert.Null(away.Mend.Key);
    }

    [Fact]
    public void An_end_off_the_table_is_not_moved_into_the_mouth_of_the_other()
    {
        BenchFile edge = Example.Edit([BenchChange.ToText("source.x", "1.79 m"), BenchChange.ToText("source.turn", "180 deg"), BenchChange.ToText("receiver.x", "2 m")]);
        Assert.Null(Checking.Check(edge.Plan!).First(f => f.Id == "off-table").Mend!.Key);
    }

    [Fact]
    public void No_gain_is_told_that_no_amplifier_has()
    {
        BenchFile crossed = Example.Edit([BenchChange.ToText("source.tilt", "167 deg"), BenchChange.ToText("receiver.roll", "-66 deg"), BenchChange.ToText("source.antenna", "probe"), BenchChange.ToText("receiver.antenna", "large-horn")]);
        Finding[] small = [.. Checking.Check(crossed.Plan!).Where(f => f.Id == "pitch-range-small")];
        Assert.NotEmpty(small);
        Assert.All(small, f => Assert.True(f.Mend!.Key is null || crossed.Edit(BenchChange.ToText(f.Mend.Key, f.Mend.NewText!)).Problems.Count == 0, f.Mend.Move));
    }

    private static void AssertMended(BenchFile spoilt, string id)
    {
        IReadOnlyList<Finding> before = Checking.Check(spoilt.Plan!);
        AssertMended(spoilt, before, before.First(f => f.Id == id));
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
