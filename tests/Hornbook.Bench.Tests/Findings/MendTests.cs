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
}
