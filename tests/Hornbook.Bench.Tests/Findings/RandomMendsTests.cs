using CsCheck;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Editing;
using Hornbook.Bench.Findings;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

[Trait("Cost", "Slow")]
public sealed class RandomMendsTests
{
    private static readonly BenchFile Shipped = BenchFile.Read(Repository.At("examples", "evening-bench.toml"));

    /// <summary>The same with few points a curve, which is enough to look it over.</summary>
    private static readonly BenchFile Example = Shipped.Edit(
        Shipped.Plan!.Demonstrations.Where(d => d is not AntennaChangeDemonstration).Select(d => BenchChange.ToText($"demonstrations.{d.Name}.points", "15")));

    /// <summary>What no move may bring with it: that something cannot stand there, or that people get too much. A louder tone that clips has its own move.</summary>
    /// <remarks>A source that is put back on the table is judged there for the first time.</remarks>
    private static readonly string[] Impossible = ["off-table", "antenna-too-low", "mouths-touch", "edge-inside-keep-out"];

    private static readonly Gen<BenchChange> Trouble = Gen.OneOf(
        Lengths("receiver.x", 20, 200), Lengths("receiver.y", -50, 50), Lengths("source.x", -5, 170), Lengths("source.z", 2, 60), Lengths("receiver.z", 2, 60), Lengths("table.length", 60, 220),
        Angles("source.turn"), Angles("receiver.turn"), Angles("receiver.roll"), Angles("source.roll"), Angles("source.tilt"),
        Angles("demonstrations.beam-width.from"), Angles("demonstrations.polarisation.to"), Lengths("demonstrations.distance-law.from", 5, 60), Lengths("demonstrations.distance-law.to", 70, 300),
        Choices("source.antenna", "large-horn", "small-horn", "probe"), Choices("receiver.antenna", "large-horn", "small-horn", "probe"),
        Choices("amplifier.gain", "1", "30", "5000"), Choices("amplifier.bandwidth", "3 Hz", "30 kHz"), Choices("tone.slope", "1 Hz/V", "2000 Hz/V", "-50 Hz/V"));

    [Fact]
    public void Every_move_that_has_a_value_leaves_a_sound_bench_without_its_finding_or_with_a_milder_one() =>
        // The same forty benches in every run, with some 180 moves: what is tried anew each time belongs to whoever looks for trouble, not to whoever waits for a change to land.
        Trouble.Array[1, 5].Array[40].Sample(benches => Assert.InRange(benches.Sum(AssertMended), 100, 400), iter: 1, threads: 1, seed: "0000KNxB5H02");

    /// <summary>How many moves were tried.</summary>
    private static int AssertMended(BenchChange[] changes)
    {
        BenchFile spoilt = Example.Edit(changes);
        if (spoilt.Plan is null)
        {
            return 0;
        }

        IReadOnlyList<Finding> before = Checking.Check(spoilt.Plan);
        Finding[] mended = [.. before.Where(f => f.Mend is { Key: not null, NewText: not null })];
        Array.ForEach(mended, found => AssertMended(spoilt, before, found));
        return mended.Length;
    }

    private static void AssertMended(BenchFile spoilt, IReadOnlyList<Finding> before, Finding found)
    {
        BenchFile mended = spoilt.Edit([BenchChange.ToText(found.Mend!.Key!, found.Mend.NewText!), .. found.Mend.Also.Select(also => BenchChange.ToText(also.Key, also.NewText))]);
        Assert.True(mended.Problems.Count == 0 && mended.Plan is not null, $"{found.Mend.Move} {string.Join("; ", mended.Problems)}");
        IReadOnlyList<Finding> after = Checking.Check(mended.Plan);
        Assert.False(after.Any(f => f.Id == found.Id && f.Wrong == found.Wrong && f.Severity <= found.Severity), $"not mended: {found.Wrong} {found.Mend.Move}");
        Finding? worse = after.FirstOrDefault(f => Impossible.Contains(f.Id) && !(found.Id == "off-table" && f.Id == "edge-inside-keep-out") && before.All(old => old.Id != f.Id));
        Assert.True(worse is null, $"{found.Wrong} {found.Mend.Move} brings: {worse?.Wrong}");
    }

    private static Gen<BenchChange> Lengths(string key, int from, int to) => Gen.Int[from, to].Select(cm => BenchChange.ToText(key, $"{cm} cm"));

    private static Gen<BenchChange> Angles(string key) => Gen.Int[-120, 200].Select(degrees => BenchChange.ToText(key, $"{degrees} deg"));

    private static Gen<BenchChange> Choices(string key, params string[] texts) => Gen.Int[0, texts.Length - 1].Select(i => BenchChange.ToText(key, texts[i]));
}
