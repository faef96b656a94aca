using System.Text.RegularExpressions;
using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Format;
using Hornbook.Bench.Files.Quantities;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Files;

/// <summary>The reference of the bench file, docs/bench-file.md: its tables follow the format, its examples run.</summary>
public sealed partial class ReferenceTests
{
    private static readonly string PagePath = Repository.At("docs", "bench-file.md");

    private static readonly string Page = File.ReadAllText(PagePath);

    public static TheoryData<string> Fragments => [.. Blocks("toml fragment")];

    [Fact]
    public void Its_tables_of_keys_and_units_follow_the_format()
    {
        Dictionary<string, TableShape> shapes = AllShapes(BenchFormat.File).ToDictionary(shape => shape.What.Replace("the ", string.Empty, StringComparison.Ordinal));
        string written = KeyTable().Replace(Page, found => $"<!-- keys: {found.Groups["name"].Value} -->\n{BenchReference.Table(shapes[found.Groups["name"].Value])}<!-- end -->");
        written = UnitTable().Replace(written, $"<!-- units -->\n| quantity | units |\n| --- | --- |\n{string.Concat(Quantity.All.Select(Units))}<!-- end -->");

        Generated.Require(PagePath, written);
    }

    [Fact]
    public void Every_table_of_the_format_has_its_keys_on_the_page() =>
        Assert.All(AllShapes(BenchFormat.File), shape => Assert.Contains($"<!-- keys: {shape.What[4..]} -->", Page, StringComparison.Ordinal));

    [Fact]
    public void Its_whole_file_loads() => Assert.Empty(BenchFile.Parse(Whole(), "bench.toml").Problems);

    [Theory]
    [MemberData(nameof(Fragments))]
    public void Its_fragments_load_in_the_whole_file(string fragment)
    {
        string bench = Without(Whole(), Headers(fragment)) + "\n" + fragment;

        Assert.Empty(BenchFile.Parse(bench, "bench.toml").Problems);
    }

    [Fact]
    public void Its_wrong_examples_give_the_messages_below_them()
    {
        MatchCollection examples = WrongExample().Matches(Page);

        Assert.True(examples.Count >= 2);
        Assert.All(examples, example =>
        {
            string wrong = example.Groups["wrong"].Value;
            string rest = Without(Whole(), Headers(wrong)) + "\n";
            int above = rest.Count(one => one == '\n');
            string told = string.Join('\n', BenchFile.Parse(rest + wrong, "bench.toml").Problems.Select(problem => (problem with { Line = problem.Line - above }).Message));
            Assert.Equal(example.Groups["told"].Value.TrimEnd(), told);
        });
    }

    private static string Whole() => Blocks("toml").Single();

    private static IEnumerable<string> Blocks(string kind) =>
        Regex.Matches(Page, $"^```{kind}\n(?<text>.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline).Select(block => block.Groups["text"].Value);

    private static string[] Headers(string fragment) => [.. Header().Matches(fragment).Select(header => header.Value)];

    /// <summary>A bench without the tables of some headers.</summary>
    private static string Without(string bench, string[] headers) => string.Join("\n\n", bench.Split("\n\n").Where(part => !headers.Contains(part.Split('\n')[0])));

    private static string Units(Quantity quantity) =>
        $"| {quantity.Name} | {string.Join(", ", quantity.Units.Select(unit => $"`{unit.Symbol}`" + string.Concat(unit.AlsoWritten.Select(other => $" or `{other}`"))))} |\n";

    private static IEnumerable<TableShape> AllShapes(TableShape shape) =>
        shape.KeysFor(null).SelectMany(key => Inner(key.Value)).SelectMany(AllShapes).Prepend(shape).DistinctBy(one => one.What);

    private static IEnumerable<TableShape> Inner(ValueRule rule) => rule switch
    {
        TableRule table => [table.Shape],
        NamedTablesRule named => [named.Item.Shape],
        WordOrTableRule either => [either.Table.Shape],
        ListRule { Item: TableRule table } => [table.Shape],
        _ => [],
    };

    [GeneratedRegex("<!-- keys: (?<name>[a-z ]+) -->\n.*?<!-- end -->", RegexOptions.Singleline)]
    private static partial Regex KeyTable();

    [GeneratedRegex("<!-- units -->\n.*?<!-- end -->", RegexOptions.Singleline)]
    private static partial Regex UnitTable();

    [GeneratedRegex(@"^\[[a-z]+\]", RegexOptions.Multiline)]
    private static partial Regex Header();

    [GeneratedRegex("^```toml wrong\n(?<wrong>.*?)^```\n\n```text\n(?<told>.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex WrongExample();
}
