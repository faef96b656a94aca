using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Hornbook.Bench.Files;
using Hornbook.Bench.Findings;
using Hornbook.Commands;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Commands;

public sealed class CheckCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("hornbook-check-").FullName;

    public static TheoryData<string> Examples => [.. Directory.GetFiles(Repository.At("examples"), "*.toml").Order(StringComparer.Ordinal)];

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task Json_has_the_findings_of_the_bench_worst_first(string bench)
    {
        IReadOnlyList<Finding> expected = BenchFindings.Of(BenchFile.Read(bench).Plan!, null, TestContext.Current.CancellationToken);
        JsonNode json = JsonNode.Parse((await Typed.In("check", bench, "--json")).Output)!;
        Assert.Equal(expected.Select(f => f.Id), json["findings"]!.AsArray().Select(f => f!["id"]!.GetValue<string>()));
        Assert.Equal(expected.Count(f => f.Severity == Severity.Spoils), json["spoils_count"]!.GetValue<int>());
        Assert.Empty(UnitOfKey.Missing(json));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task Nothing_spoils_the_show_of_an_example_and_it_is_said_in_80_columns(string bench)
    {
        Typed typed = await Typed.In("check", bench);
        Assert.Equal(ExitCode.Fine, typed.Code);
        Assert.All(typed.Lines, line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public async Task Panels_at_hand_are_listed_in_words()
    {
        Typed typed = await Typed.In("check", Repository.At("examples", "panels-bench.toml"));
        string text = string.Join(' ', typed.Lines.Select(line => line.Trim()));
        Assert.Contains("box strip grid, 15 cm × 15 cm, strips of 2.5 mm every 5 mm at 45° to its upright; lies aside", Regex.Replace(text, " +", " "), StringComparison.Ordinal);
        Assert.Contains("dish dish, 36 cm across", Regex.Replace(text, " +", " "), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bench_without_panels_says_nothing_of_them() =>
        Assert.DoesNotContain("Panels", (await Typed.In("check", Repository.At("examples", "evening-bench.toml"))).Output, StringComparison.Ordinal);

    [Fact]
    public async Task A_spoilt_show_has_code_1_and_begins_with_what_spoils_it()
    {
        string path = Path.Combine(_folder, "loud.toml");
        string text = File.ReadAllText(Repository.At("examples", "evening-bench.toml"));
        await File.WriteAllTextAsync(path, Regex.Replace(text, @"(?m)^gain = \d+", "gain = 100000"), TestContext.Current.CancellationToken);
        Typed typed = await Typed.In("check", path);
        Assert.Equal(ExitCode.Spoiled, typed.Code);
        Assert.StartsWith("SPOILS", typed.Lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_guide_below_cut_off_is_a_finding_and_no_crash()
    {
        string path = Path.Combine(_folder, "low.toml");
        string text = File.ReadAllText(Repository.At("examples", "evening-bench.toml"));
        await File.WriteAllTextAsync(path, text.Replace("10.525 GHz", "5 GHz", StringComparison.Ordinal), TestContext.Current.CancellationToken);
        Typed typed = await Typed.In("check", path);
        Assert.Equal(ExitCode.Spoiled, typed.Code);
        Assert.Equal(ExitCode.BadInput, (await Typed.In("predict", path)).Code);
    }
}
