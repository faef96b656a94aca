using System.Diagnostics;
using Xunit;

namespace Hornbook.Tests.House;

/// <summary>What the pages say to type is typed, in a copy of the examples, and does what they say.</summary>
public sealed class ConsoleExampleTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("hornbook-console-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    public static TheoryData<string> PagesWithExamples() =>
        [.. Checkout.Pages.Where(p => ConsoleExample.Of(p).Any(e => e.IsRun)).Select(p => p.Path)];

    [Theory]
    [MemberData(nameof(PagesWithExamples))]
    [Trait("Cost", "Slow")]
    public void What_a_page_says_to_type_does_what_it_says(string page)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "the examples are for bash");
        Directory.CreateDirectory(Path.Combine(_folder, "examples"));
        foreach (SourceText bench in Checkout.Under("examples/", ".toml"))
        {
            File.WriteAllText(Path.Combine(_folder, bench.Path), bench.Text);
        }

        Offences.None(ConsoleExample.Of(Checkout.File(page)).Where(e => e.IsRun).SelectMany(Offence));
    }

    [Fact]
    public void A_wrong_exit_code_and_a_line_that_does_not_come_are_seen()
    {
        SourceText page = new("docs/a.md", "```console\n$ hornbook --version\n99.9.9\n$ hornbook --version # exit code 2\n```\n");
        Assert.Equal(2, ConsoleExample.Of(page).SelectMany(Offence).Count());
    }

    [Fact]
    public void Blocks_are_read_as_they_are_meant()
    {
        SourceText page = new(
            "docs/a.md", "```console\n$ ./hornbook check a.toml  # exit code 1\none\n…\nthree\n$ ls\n```\n```toml\n$ hornbook no\n```\n```console\n$ ./hornbook\n```\n");
        ConsoleExample[] examples = [.. ConsoleExample.Of(page)];
        Assert.Equal(["./hornbook check a.toml", "ls", "./hornbook"], examples.Select(e => e.Command));
        Assert.Equal([true, false, false], examples.Select(e => e.IsRun));
        Assert.Equal(1, examples[0].ExitCode);
        Assert.Null(examples[0].FirstMissing("one\ntwo\nthree\n"));
        Assert.Equal("three", examples[0].FirstMissing("three\none\n"));
    }

    private IEnumerable<string> Offence(ConsoleExample example)
    {
        (int code, string output) = Type(example.Command);
        if (code != example.ExitCode)
        {
            yield return $"{example.Page}:{example.LineNumber}: '{example.Command}' ends with {code}, not {example.ExitCode}:\n{output}";
        }
        else if (example.FirstMissing(output) is string missing)
        {
            yield return $"{example.Page}:{example.LineNumber}: '{example.Command}' does not say '{missing}'; it says:\n{output}";
        }
    }

    private (int Code, string Output) Type(string command)
    {
        string program = Path.Combine(AppContext.BaseDirectory, "hornbook.dll");
        ProcessStartInfo start = new("bash", ["-c", $"hornbook() {{ dotnet '{program}' \"$@\"; }}\n{command.Replace("./hornbook", "hornbook", StringComparison.Ordinal)}"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = _folder,
        };
        using Process process = Process.Start(start)!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd() + errors.GetAwaiter().GetResult();
        process.WaitForExit();
        return (process.ExitCode, output.ReplaceLineEndings("\n"));
    }
}
