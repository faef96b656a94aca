using CsCheck;
using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Editing;
using Hornbook.Bench.Files.Merging;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Files.Merging;

public sealed class BenchMergeTests
{
    private static readonly BenchFile Origin = BenchFile.Parse(File.ReadAllText(Repository.At("examples", "evening-bench.toml")), "evening-bench.toml");

    private static readonly string[] Keys =
    [
        "title", "source.x", "receiver.x", "receiver.turn", "amplifier.gain", "antennas.small-horn.length", "demonstrations.distance-law.to",
    ];

    [Fact]
    public void Changes_of_different_keys_come_together_in_their_text()
    {
        BenchFile ours = Set(Origin, "receiver.x", "1.1 m");
        BenchFile theirs = BenchFile.Parse(Set(Origin, "amplifier.gain", "500").Text + "\n# a thought\n", Origin.Name);
        BenchFile joined = BenchMerge.Of(Origin, ours, theirs).Joined!;
        Assert.Equal(Set(theirs, "receiver.x", "1.1 m").Text, joined.Text);
        Assert.EndsWith("# a thought\n", joined.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_change_on_both_sides_is_no_conflict()
    {
        BenchFile both = Set(Origin, "receiver.x", "1.1 m");
        Assert.Equal(both.Text, BenchMerge.Of(Origin, both, both).Joined!.Text);
    }

    [Fact]
    public void One_key_changed_to_two_things_is_for_a_person_to_choose()
    {
        BenchFile ours = Set(Set(Origin, "receiver.x", "1.1 m"), "source.x", "31 cm");
        BenchFile theirs = Set(Set(Origin, "receiver.x", "95 cm"), "amplifier.gain", "500");
        BenchMerge merge = BenchMerge.Of(Origin, ours, theirs);
        Assert.Null(merge.Joined);
        Assert.Equal([new MergeConflict("receiver.x", "1.1 m", "95 cm")], merge.Conflicts);
        Assert.Equal(Set(Set(theirs, "receiver.x", "1.1 m"), "source.x", "31 cm").Text, merge.WithOurs!.Text);
        Assert.Equal(Set(theirs, "source.x", "31 cm").Text, merge.WithTheirs!.Text);
    }

    [Fact]
    public void What_cannot_be_put_in_key_by_key_is_not_joined()
    {
        BenchFile ours = Set(Origin, "antennas.small-horn.length", "46 mm");
        string gone = Origin.Text.Replace("[antennas.small-horn]", "[antennas.other-horn]", StringComparison.Ordinal).Replace("\"small-horn\"", "\"other-horn\"", StringComparison.Ordinal);
        BenchFile theirs = BenchFile.Parse(gone, Origin.Name);
        Assert.True(theirs.IsUsable);
        BenchMerge merge = BenchMerge.Of(Origin, ours, theirs);
        Assert.Null(merge.WithOurs);
        Assert.Equal("46 mm", Assert.Single(merge.Conflicts).Ours);
        Assert.Null(merge.Conflicts[0].Theirs);
    }

    [Fact]
    public void A_file_that_is_wrong_is_not_joined() => Assert.Throws<InvalidOperationException>(
        () => BenchMerge.Of(Origin, Origin, BenchFile.Parse("title = 3", "wrong.toml")));

    [Fact]
    public void No_change_is_ever_lost() => Gen.Select(Sides, Sides).Sample((ours, theirs) =>
    {
        BenchMerge merge = BenchMerge.Of(Origin, Apply(ours), Apply(theirs));
        // derived: each key goes by the rule of three ways; conflicts are the keys that both changed to different numbers.
        string[] expected = [.. Keys.Where((_, i) => ours[i] > 0 && theirs[i] > 0 && ours[i] != theirs[i]).Order(StringComparer.Ordinal)];
        Assert.Equal(expected, merge.Conflicts.Select(conflict => conflict.Key));
        Assert.Equal(Apply(Choose(ours, theirs)).Text, merge.WithOurs!.Text);
        Assert.Equal(Apply(Choose(theirs, ours)).Text, merge.WithTheirs!.Text);
    });

    private static Gen<int[]> Sides => Gen.Int[0, 2].Array[Keys.Length];

    private static int[] Choose(int[] first, int[] second) => [.. first.Zip(second, (a, b) => a > 0 ? a : b)];

    private static BenchFile Apply(int[] numbers) => Origin.Edit(numbers.Select((n, i) => (n, Key: Keys[i])).Where(set => set.n > 0)
        .Select(set => BenchChange.ToText(set.Key, Text(set.Key, set.n))));

    // Values that fit the keys above; which ones does not matter, only that they differ.
    private static string Text(string key, int n) => key switch
    {
        "title" => $"Bench {n}",
        "receiver.turn" => $"17{n} deg",
        "amplifier.gain" => $"90{n}",
        "antennas.small-horn.length" => $"4{n} mm",
        "source.x" => $"3{n} cm",
        _ => $"1.2{n} m",
    };

    private static BenchFile Set(BenchFile file, string key, string text) => file.Edit(BenchChange.ToText(key, text));
}
