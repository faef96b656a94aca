using System.Text;
using Hornbook.Bench.Files;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Files;

/// <summary>Bench files with a mistake each, and the whole message that it gets: wrong-benches.approved.txt.</summary>
public sealed class WrongBenchesTests
{
    private static readonly string CasesPath = Repository.At("tests", "Hornbook.Bench.Tests", "Files", "wrong-benches.approved.txt");

    private static readonly string Minimal = File.ReadAllText(Repository.At("tests", "Hornbook.Bench.Tests", "Files", "minimal-bench.toml"));

    [Fact]
    public void The_bench_that_the_cases_spoil_is_right() => Assert.Empty(BenchFile.Parse(Minimal, "bench.toml").Problems);

    [Fact]
    public void Every_mistake_gets_its_message()
    {
        StringBuilder received = new();
        foreach (string part in File.ReadAllText(CasesPath).Split("\n\n"))
        {
            received.Append(part.StartsWith('=') ? Answered(part) : part.TrimEnd() + "\n").Append('\n');
        }

        Approve.Text(received.ToString().TrimEnd() + "\n", CasesPath);
    }

    [Fact]
    public void There_are_sixty_cases_and_more_and_each_has_a_problem()
    {
        string[] cases = [.. File.ReadAllText(CasesPath).Split("\n\n").Where(part => part.StartsWith('='))];

        Assert.True(cases.Length >= 60, $"{cases.Length} cases");
        Assert.All(cases, one => Assert.NotEmpty(BenchFile.Parse(Spoilt(one), "bench.toml").Problems));
        Assert.Equal(cases.Length, cases.Select(one => one.Split('\n')[0]).Distinct().Count());
    }

    private static string Answered(string one) => string.Join('\n', [
        .. one.TrimEnd().Split('\n').Where(line => !line.StartsWith('!')),
        .. BenchFile.Parse(Spoilt(one), "bench.toml").Problems.Select(problem => "! " + problem.Message),
        string.Empty,
    ]);

    /// <summary>The minimal bench with each hunk's lines taken out and put in; a hunk is some - lines and the + lines below them.</summary>
    private static string Spoilt(string one)
    {
        List<string> bench = [.. Minimal.TrimEnd().Split('\n')];
        int at = -1;
        string before = string.Empty;
        foreach (string line in one.Split('\n').Where(line => line.StartsWith("- ", StringComparison.Ordinal) || line.StartsWith("+ ", StringComparison.Ordinal)))
        {
            bool removes = line.StartsWith('-');
            if (removes)
            {
                int found = bench.IndexOf(line[2..], Math.Max(at, 0));
                Assert.True(found >= 0, $"{one.Split('\n')[0]}: the minimal bench has no line {line[2..]} there");
                bench.RemoveAt(found);
                at = before.StartsWith('-') ? at : found;
            }
            else
            {
                at = at < 0 ? bench.Count : at;
                bench.Insert(at++, line[2..]);
            }

            before = line;
        }

        return string.Join('\n', bench) + "\n";
    }
}
