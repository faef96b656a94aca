using System.Globalization;
using System.Text.RegularExpressions;
using Hornbook.Bench.Explanations;
using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Editing;
using Hornbook.Bench.Readings;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Explanations;

public sealed partial class ExplainingTests
{
    private static readonly BenchFile File = BenchFile.Read(Repository.At("examples", "evening-bench.toml"));

    public static TheoryData<ExplanationTopic> Topics => [.. Enum.GetValues<ExplanationTopic>()];

    [Theory]
    [MemberData(nameof(Topics))]
    public void Every_number_is_explained_whole_and_its_sources_are_listed(ExplanationTopic topic)
    {
        Explanation why = Explaining.Of(topic, Bench(File));
        Assert.All([why.Title, why.Meaning, why.Formula, why.Holds, why.Certainty], text => Assert.NotEqual(string.Empty, text.Trim()));
        Assert.NotEmpty(why.Here);
        Assert.NotEmpty(why.Symbols);
        string listed = System.IO.File.ReadAllText(Repository.At("docs", "sources.md"));
        Assert.All(why.Sources, key => Assert.Contains($"- **[{key}]** ", listed, StringComparison.Ordinal));
        Assert.DoesNotContain(why.Here.Concat(why.Symbols.Select(s => s.Here)), text => text.Contains("NaN", StringComparison.Ordinal) || text.Contains('∞'));
    }

    [Theory]
    [InlineData(ExplanationTopic.Received)]
    [InlineData(ExplanationTopic.Amplifier)]
    [InlineData(ExplanationTopic.Link)]
    public void The_formula_with_its_values_comes_out_as_it_says(ExplanationTopic topic)
    {
        string line = Explaining.Of(topic, Bench(File)).Here[0];
        string[] sides = line.Split(" = ");
        // Within 1 %: the values are written with three digits.
        Close.Relative(Value(sides[0]), sides[1].Split(" + ").Sum(term => term.Split(" · ").Aggregate(1.0, (product, factor) => product * Value(factor))), 1e-2);
    }

    [Fact]
    public void It_follows_the_bench()
    {
        BenchFile nearer = File.Edit(BenchChange.ToText("receiver.x", "60 cm"));
        Assert.Contains(Explaining.Of(ExplanationTopic.Ripple, Bench(nearer)).Symbols, symbol => symbol.Here == "30 cm"); // derived: from 30 to 60 cm
        Assert.NotEqual(Explaining.Of(ExplanationTopic.Link, Bench(File)).Here, Explaining.Of(ExplanationTopic.Link, Bench(nearer)).Here);
    }

    [Fact]
    public void The_texts_are_as_approved() => Approve.Text(
        string.Join("\n", Enum.GetValues<ExplanationTopic>().Select(topic => Text(Explaining.Of(topic, Bench(File))))),
        Repository.At("tests", "Hornbook.Bench.Tests", "Explanations", "EveningBench.approved.txt"));

    private static ExplainedBench Bench(BenchFile file)
    {
        Scene scene = Scene.Of(file.Plan!);
        return new ExplainedBench(scene, scene.Plan.Source, scene.Plan.Receiver, scene.Read());
    }

    private static string Text(Explanation why) => string.Join("\n",
    [
        why.Title, why.Meaning, "  " + why.Formula, .. why.Here.Select(line => "  " + line), .. why.Symbols.Select(s => $"  {s.Symbol}: {s.Meaning}: {s.Here}"),
        why.Holds, why.Certainty, string.Join(", ", why.Sources), string.Empty,
    ]);

    // A number as it stands in an explanation, in SI: "5 mW", "1.18·10⁻³", "2.86 V".
    private static double Value(string text)
    {
        Match match = Written().Match(text);
        double number = double.Parse(match.Groups["digits"].Value, CultureInfo.InvariantCulture);
        string raised = match.Groups["power"].Value.Replace("⁻", "-", StringComparison.Ordinal);
        string digits = string.Concat(raised.Select(c => "⁰¹²³⁴⁵⁶⁷⁸⁹".Contains(c) ? (char)('0' + "⁰¹²³⁴⁵⁶⁷⁸⁹".IndexOf(c)) : c));
        double prefix = match.Groups["prefix"].Value switch { "m" => 1e-3, "µ" => 1e-6, "n" => 1e-9, _ => 1.0 };
        return number * prefix * (digits.Length > 0 ? Math.Pow(10.0, int.Parse(digits, CultureInfo.InvariantCulture)) : 1.0);
    }

    [GeneratedRegex(@"^(?<digits>[\d.]+)(·10(?<power>[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+))?( (?<prefix>[mµn]?)[VW])?$")]
    private static partial Regex Written();
}
