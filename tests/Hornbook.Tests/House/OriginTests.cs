using System.Text.RegularExpressions;
using Xunit;

namespace Hornbook.Tests.House;

/// <summary>A number of three digits or more that a test compares with says in a comment where it comes from, in the test or at its class.</summary>
public sealed partial class OriginTests
{
    [Fact]
    public void Numbers_that_tests_compare_with_have_an_origin() =>
        Offences.None(Checkout.Under("tests/", "Tests.cs").Where(f => f.Stem != nameof(OriginTests)).SelectMany(Unexplained));

    [Fact]
    public void A_number_from_nowhere_is_seen()
    {
        const string Bare = "class A\n{\n    [Fact]\n    public void B() => Close.Relative(12.83, C(), 1e-3);\n}\n";
        Assert.Single(Unexplained(new SourceText("tests/ATests.cs", Bare)));
        Assert.Single(Unexplained(new SourceText("tests/ATests.cs", "class A\n{\n    [Theory]\n    [InlineData(1, 56.72)]\n    public void B(int n, double d) => Close.Relative(d, C(n), 1e-3);\n}\n")));
        Assert.Empty(Unexplained(new SourceText("tests/ATests.cs", Bare.Replace("    [Fact]", "    // [Balanis2016].\n    [Fact]", StringComparison.Ordinal))));
        Assert.Empty(Unexplained(new SourceText("tests/ATests.cs", Bare.Replace("{\n", "{\n    // [Balanis2016].\n", StringComparison.Ordinal))));
        Assert.Empty(Unexplained(new SourceText("tests/ATests.cs", Bare.Replace("12.83", "1.0", StringComparison.Ordinal))));
    }

    private static IEnumerable<string> Unexplained(SourceText file)
    {
        bool explained = false;
        foreach (string part in TestBegins().Split(file.Text))
        {
            bool commented = part.Contains("//", StringComparison.Ordinal);
            if (!explained && !commented && Compared(part).FirstOrDefault(n => n.Replace(".", string.Empty, StringComparison.Ordinal).Trim('0').Length >= 3) is string number)
            {
                yield return $"{file.Path}: {number} in {Name().Match(part).Groups[1].Value} comes from nowhere";
            }

            // What stands between the head of a class and its first test speaks for all tests of that class.
            int head = part.LastIndexOf("class ", StringComparison.Ordinal);
            explained = head >= 0 ? part.LastIndexOf("//", StringComparison.Ordinal) >= LineBefore(part, head) : explained;
        }
    }

    private static int LineBefore(string text, int index) => Math.Max(0, text.LastIndexOf("\n\n", index, StringComparison.Ordinal));

    private static IEnumerable<string> Compared(string test) =>
        CloseTo().Matches(test).Concat(test.Contains("Close.", StringComparison.Ordinal) ? Row().Matches(test).SelectMany(r => Number().Matches(r.Value)) : [])
            .Select(m => m.Groups[1].Value);

    // A test begins at its attribute, or at the comment above it.
    [GeneratedRegex(@"(?<!// [^\n]*)\n(?=(?: {4,8}// [^\n]*\n)* {4,8}\[(?:Fact|Theory))")]
    private static partial Regex TestBegins();

    [GeneratedRegex(@"void (\w+)")]
    private static partial Regex Name();

    [GeneratedRegex(@"Close\.(?:Relative|Absolute)\(\s*-?([\d.]+)(?:e-?\d+)?,")]
    private static partial Regex CloseTo();

    [GeneratedRegex(@"InlineData\(.*\)\]")]
    private static partial Regex Row();

    [GeneratedRegex(@"(?<![\w.""])([\d.]+)(?=[,)e\s])")]
    private static partial Regex Number();
}
