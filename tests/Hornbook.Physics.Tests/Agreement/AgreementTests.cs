using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Agreement;

/// <summary>The README's table of published values is what comes out, and each of its rows is within its tolerance.</summary>
public sealed class AgreementTests
{
    private const string Begin = "<!-- agreement: made by tests/Hornbook.Physics.Tests/Agreement, do not edit -->\n";

    private const string End = "<!-- end of agreement -->";

    [Fact]
    public void Every_row_is_within_its_tolerance() =>
        Assert.All(AgreementRows.All, row => Close.Absolute(row.Published, row.Computed, row.Tolerance));

    [Fact]
    public void A_difference_beyond_the_printed_digits_is_explained() =>
        Assert.All(AgreementRows.All, row => Assert.True(
            row.Why.Length > 0 || Math.Abs(row.Computed - row.Published) <= 0.51 * Math.Pow(10.0, -row.Decimals),
            $"{row.Quantity}: {row.Computed} differs from {row.Published} by more than its digits, and nothing says why"));

    [Fact]
    public void The_readme_shows_the_rows_as_they_come_out()
    {
        string path = Repository.At("README.md");
        string page = File.ReadAllText(path).ReplaceLineEndings("\n");
        int from = page.IndexOf(Begin, StringComparison.Ordinal), to = page.IndexOf(End, StringComparison.Ordinal);
        Assert.True(from >= 0 && to > from, "README.md has no place for the table");
        string made = string.Concat(page.AsSpan(0, from + Begin.Length), Table(), page.AsSpan(to));
        if (Approve.Accepting && made != page)
        {
            File.WriteAllText(path, made);
            return;
        }

        Assert.Equal(made, page);
    }

    private static string Table() =>
        "\n| What | Published | Hornbook | Difference | Source | Why they differ |\n| --- | ---: | ---: | ---: | --- | --- |\n"
        + string.Concat(AgreementRows.All.Select(row => row.Markdown + "\n")) + "\n";
}
