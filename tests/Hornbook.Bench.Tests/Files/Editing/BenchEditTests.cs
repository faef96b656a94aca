using CsCheck;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Editing;
using Hornbook.Physics;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Files.Editing;

public sealed class BenchEditTests
{
    private static readonly BenchFile Evening = BenchFile.Read(Repository.At("examples", "evening-bench.toml"));

    private static readonly BenchFile Minimal = BenchFile.Read(Repository.At("tests", "Hornbook.Bench.Tests", "Files", "minimal-bench.toml"));

    private static readonly string[] Keys =
    [
        "source.x", "source.y", "source.z", "receiver.x", "receiver.y", "receiver.z",
        "source.turn", "source.tilt", "source.roll", "receiver.turn", "receiver.tilt", "receiver.roll",
    ];

    [Fact]
    public void Changing_one_value_changes_that_values_characters_and_nothing_else() =>
        // Between the ends, so that neither is put into the other.
        Gen.Select(Gen.Int[0, Keys.Length - 1], Gen.Double[0.5, 1.1]).Sample((i, value) =>
        {
            BenchFile edited = Evening.Edit(BenchChange.ToValue(Keys[i], value));

            (string before, string after) = OnlyDifferentLines(Evening.Text, edited.Text);
            Assert.Empty(edited.Problems);
            Assert.Equal(WithoutValue(before), WithoutValue(after));
        });

    [Fact]
    public void The_new_value_is_in_the_plan_to_a_tenth_of_a_millimetre() =>
        Gen.Double[0.4, 1.7].Sample(x => // the source stands at 0.3 m
        {
            BenchFile edited = Evening.Edit(BenchChange.ToValue("receiver.x", x));

            Close.Absolute(x, edited.Plan!.Receiver.Pose.Position.X, 0.500001e-4); // derived: half of the step
            Assert.Equal(Evening.Plan!.Source, edited.Plan.Source);
        });

    [Fact]
    public void Changing_it_back_gives_the_old_text()
    {
        BenchFile there = Evening.Edit(BenchChange.ToText("receiver.x", "1 m"), BenchChange.ToText("amplifier.gain", "50 dB"), BenchChange.ToText("source.antenna", "small-horn"));
        BenchFile back = there.Edit(BenchChange.ToText("receiver.x", "1.2 m"), BenchChange.ToText("amplifier.gain", "1000"), BenchChange.ToText("source.antenna", "large-horn"));

        Assert.NotEqual(Evening.Text, there.Text);
        Assert.Equal("small-horn", there.Plan!.Source.Antenna);
        Assert.Equal(Evening.Text, back.Text);
    }

    [Fact]
    public void A_pose_that_the_file_states_already_changes_nothing() =>
        Assert.Equal(Evening.Text, Evening.Edit([.. BenchChange.ToPose(BenchEnd.Source, Evening.Plan!.Source.Pose), .. BenchChange.ToPose(BenchEnd.Receiver, Evening.Plan.Receiver.Pose)]).Text);

    [Fact]
    public void A_pose_is_written_where_it_differs()
    {
        Pose pose = Minimal.Plan!.Receiver.Pose;
        BenchFile edited = Minimal.Edit(BenchChange.ToPose(BenchEnd.Receiver, pose with { Position = pose.Position + new Vector(0.1, 0.0, 0.0), Roll = Math.PI / 4.0 }));

        Assert.Equal(
            Minimal.Text.Replace("x = \"1.2 m\"\nz = \"25 cm\"\nturn = \"180 deg\"\n", "x = \"1.3 m\"\nz = \"25 cm\"\nturn = \"180 deg\"\nroll = \"45 deg\"\n", StringComparison.Ordinal),
            edited.Text);
        Close.Relative(Math.PI / 4.0, edited.Plan!.Receiver.Pose.Roll, 1e-15);
    }

    [Theory]
    [InlineData("x = \"1.2 m\"", "receiver.x", 1.25, "x = \"1.25 m\"")]
    [InlineData("x = \"1200 mm\"", "receiver.x", 1.25004, "x = \"1250 mm\"")]
    [InlineData("x = '120cm'", "receiver.x", 1.25, "x = '125 cm'")]
    [InlineData("x   =   \"47 in\"   # no metres here", "receiver.x", 1.27, "x   =   \"50 in\"   # no metres here")]
    [InlineData("\"x\" = \"\"\"1.2 m\"\"\"", "receiver.x", 1.25, "\"x\" = \"1.25 m\"")]
    public void The_unit_and_the_quotes_stay_as_they_were(string was, string key, double value, string becomes)
    {
        BenchFile file = BenchFile.Parse(Minimal.Text.Replace("x = \"1.2 m\"", was, StringComparison.Ordinal), "bench.toml");

        Assert.Equal(file.Text.Replace(was, becomes, StringComparison.Ordinal), file.Edit(BenchChange.ToValue(key, value)).Text);
    }

    [Fact]
    public void A_level_stays_a_level()
    {
        BenchFile file = BenchFile.Parse(Minimal.Text.Replace("12 mW", "10.8 dBm", StringComparison.Ordinal), "bench.toml");

        // derived: 20 mW = 13.0103 dBm
        Assert.Contains("power = \"13.0103 dBm\"", file.Edit(BenchChange.ToValue("source.power", 20e-3)).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("antennas.horn.length", "66 mm")]
    [InlineData("antennas.probe.reflection", "0.2")]
    [InlineData("antennas.probe.guide", "WR-75")]
    [InlineData("amplifier.offset", "10 mV")]
    [InlineData("exposure.limit", "strictest")]
    [InlineData("title", "Of \"waves\" and \\ horns")]
    public void Keys_of_every_table_can_be_changed_or_added(string key, string text)
    {
        BenchFile edited = Minimal.Edit(BenchChange.ToText(key, text));

        Assert.Empty(edited.Problems);
        Assert.NotEqual(Minimal.Text, edited.Text);
        Assert.Equal(edited.Text, edited.Edit(BenchChange.ToText(key, text)).Text);
    }

    [Fact]
    public void A_demonstration_is_found_by_its_name()
    {
        BenchFile edited = Evening.Edit(BenchChange.ToText("demonstrations.distance-law.to", "1.3 m"));

        Assert.Equal(1.3, edited.Plan!.Demonstrations.OfType<DistanceDemonstration>().Single().To);
    }

    [Fact]
    public void Inline_and_dotted_tables_take_new_keys_too()
    {
        string text = Minimal.Text
            .Replace("[receiver]\nantenna = \"probe\"\nx = \"1.2 m\"\nz = \"25 cm\"\nturn = \"180 deg\"\n", string.Empty, StringComparison.Ordinal)
            .Replace("[table]", "receiver = { antenna = \"probe\", x = \"1.2 m\", z = \"25 cm\", turn = \"180 deg\" }\nexposure.limit = 'strictest'\n\n[table]", StringComparison.Ordinal);
        BenchFile edited = BenchFile.Parse(text, "bench.toml").Edit(BenchChange.ToText("receiver.roll", "90 deg"), BenchChange.ToText("exposure.limit", "strictest"));

        Assert.Empty(edited.Problems);
        Assert.Contains("turn = \"180 deg\", roll = \"90 deg\" }\nexposure.limit = 'strictest'\n", edited.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Line_ends_and_byte_order_mark_stay()
    {
        string text = "\uFEFF" + Minimal.Text.ReplaceLineEndings("\r\n");
        BenchFile edited = BenchFile.Parse(text, "bench.toml").Edit(BenchChange.ToText("receiver.x", "1.3 m"), BenchChange.ToText("receiver.roll", "90 deg"));

        Assert.Equal(
            text.Replace("1.2 m", "1.3 m", StringComparison.Ordinal).Replace("turn = \"180 deg\"\r\n", "turn = \"180 deg\"\r\nroll = \"90 deg\"\r\n", StringComparison.Ordinal),
            edited.Text);
    }

    [Fact]
    public void A_value_that_does_not_fit_gives_a_file_with_that_problem()
    {
        BenchFile edited = Minimal.Edit(BenchChange.ToText("receiver.x", "1,3 m"));

        Assert.Null(edited.Plan);
        Assert.Equal("x = \"1,3 m\" has a comma in its number; a decimal point fits; type \"1.3 m\"", $"{edited.Problems[0].Read}; {edited.Problems[0].Fits}; {edited.Problems[0].Type}");
    }

    [Theory]
    [InlineData("receiver.colour")]
    [InlineData("nothing")]
    [InlineData("antennas.nobody.length")]
    [InlineData("antennas.probe.length")]
    [InlineData("antennas")]
    [InlineData("demonstrations.nothing.to")]
    [InlineData("antennas.")]
    [InlineData("demonstrations")]
    [InlineData("source.x.y")]
    public void A_key_that_leads_nowhere_is_refused(string key) =>
        Assert.Throws<ArgumentException>(() => Minimal.Edit(BenchChange.ToText(key, "1 m")));

    [Fact]
    public void A_file_that_is_not_usable_is_not_edited() =>
        Assert.Throws<InvalidOperationException>(() => BenchFile.Parse("format = ", "bench.toml").Edit(BenchChange.ToText("title", "x")));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_value_that_is_not_finite_is_refused(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BenchChange.ToValue("receiver.x", value));

    private static (string Before, string After) OnlyDifferentLines(string before, string after)
    {
        string[] old = before.Split('\n'), now = after.Split('\n');
        Assert.Equal(old.Length, now.Length);
        return old.Zip(now).Where(pair => pair.First != pair.Second).DefaultIfEmpty((string.Empty, string.Empty)).Single();
    }

    private static string WithoutValue(string line) => System.Text.RegularExpressions.Regex.Replace(line, "\"[^\"]*\"", "\"\"");
}
