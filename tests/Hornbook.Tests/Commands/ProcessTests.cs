using System.Diagnostics;
using System.Globalization;
using System.Text.Json.Nodes;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Commands;

/// <summary>The program as it is started by people and scripts; what it says is tested elsewhere, without starting it.</summary>
public sealed class ProcessTests
{
    private const string Bench = "examples/evening-bench.toml";

    [Fact]
    public void Json_goes_to_the_output_and_nothing_else_does()
    {
        HornbookProcess.Result run = HornbookProcess.Run("predict", Bench, "--json");
        Assert.Equal(0, run.ExitCode);
        // On a busy machine the work may take the second after which it says so, on the error stream.
        Assert.Contains(run.Error, new[] { string.Empty, "working …\n" });
        Assert.Equal("Evening bench", JsonNode.Parse(run.Output)!["bench"]!.GetValue<string>());
    }

    [Fact]
    public void Text_into_a_pipe_has_no_control_characters()
    {
        HornbookProcess.Result run = HornbookProcess.Run("check", Bench);
        Assert.Equal(0, run.ExitCode);
        Assert.DoesNotContain('\e', run.Output);
    }

    [Fact]
    public void Wrong_input_leaves_code_2_and_says_so_on_the_error_stream()
    {
        HornbookProcess.Result run = HornbookProcess.Run("chekc", Bench);
        Assert.Equal((2, string.Empty), (run.ExitCode, run.Output));
        Assert.Contains("check", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void It_runs_in_any_folder()
    {
        HornbookProcess.Result run = HornbookProcess.RunIn(Path.GetTempPath(), "predict", Repository.At("examples", "evening-bench.toml"));
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public void A_shell_that_asks_is_answered_whatever_the_program_is_called()
    {
        const string Line = "./hornbook predict examples/evening-bench.toml po";
        HornbookProcess.Result run = HornbookProcess.Run(FormattableString.Invariant($"[suggest:{Line.Length}]"), Line);
        Assert.Contains("polarisation", run.Lines);
    }

    [Fact]
    public void The_script_for_bash_completes_in_bash()
    {
        Assert.SkipUnless(File.Exists("/bin/bash"), "there is no bash");
        string program = Path.Combine(AppContext.BaseDirectory, "hornbook.dll");
        string script = $$"""
            hornbook() { dotnet '{{program}}' "$@"; }
            source <(hornbook completion bash)
            COMP_LINE='hornbook tab' COMP_POINT=12 COMP_WORDS=(hornbook tab) COMP_CWORD=1
            _hornbook hornbook
            printf '%s\n' "${COMPREPLY[@]}"
            """;
        using Process bash = Process.Start(new ProcessStartInfo("/bin/bash", ["-c", script]) { RedirectStandardOutput = true })!;
        Assert.Equal("tabletop\n", bash.StandardOutput.ReadToEnd());
    }

    [Fact]
    [Trait("Cost", "Slow")]
    public async Task Ctrl_C_ends_long_work_with_code_130_and_one_line()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "signals are sent by kill");
        string bench = Path.GetTempFileName();
        await File.WriteAllTextAsync(bench, LongBench(), TestContext.Current.CancellationToken);
        using Process process = HornbookProcess.Start(Repository.Root, "predict", bench, "--all");
        _ = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken); // a full pipe would hold it up

        // The first line of progress comes after a second; then the work is well under way.
        // On a busy machine preparing the bench may take that second.
        string? progress = await process.StandardError.ReadLineAsync(TestContext.Current.CancellationToken);
        if (progress == "working …")
        {
            progress = await process.StandardError.ReadLineAsync(TestContext.Current.CancellationToken);
        }

        using Process kill = Process.Start("kill", ["-INT", process.Id.ToString(CultureInfo.InvariantCulture)]);
        string rest = await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        File.Delete(bench);
        Assert.StartsWith("predicting ", progress, StringComparison.Ordinal);
        Assert.EndsWith("hornbook: stopped\n", rest, StringComparison.Ordinal);
        Assert.Equal(130, process.ExitCode);
    }

    // So many and so fine demonstrations that a few seconds would not do.
    private static string LongBench()
    {
        // With a table top the waves are solved anew for each direction of the source.
        string text = File.ReadAllText(Repository.At("examples", "evening-bench.toml"))
            .Replace("width = \"70 cm\"\n", "width = \"70 cm\"\nmaterial = \"plywood\"\nthickness = \"20 mm\"\n", StringComparison.Ordinal);
        IEnumerable<string> more = Enumerable.Range(0, 36).Select(i =>
            $"\n[[demonstrations]]\nkind = \"beam width\"\nend = \"source\"\nname = \"more-{i}\"\nfrom = \"0 deg\"\nto = \"90 deg\"\npoints = 2001\n");
        return text + string.Concat(more);
    }
}
