using System.Diagnostics;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.House;

/// <summary>./hornbook in a checkout of its own, with a stand-in for dotnet that writes down what it is asked.</summary>
public sealed class StartScriptTests : IDisposable
{
    private const string StandIn = """
        #!/usr/bin/env bash
        case $1 in
          --version) [ -z "${NO_SDK:-}" ] || exit 1 ;;
          --list-sdks) echo "8.0.100 [there]" ;;
          build)
            echo built >> builds
            if [ -n "${OFFLINE:-}" ]; then echo "error NU1301: Unable to load the service index"; exit 1; fi
            mkdir -p artifacts/bin/Hornbook/release && touch artifacts/bin/Hornbook/release/hornbook.dll ;;
          *) shift; printf '<%s>' "$@" ;;
        esac
        """;

    private static readonly string[] Tools =
        ["bash", "env", "dirname", "readlink", "sed", "find", "mkdir", "mktemp", "mv", "rm", "touch", "grep", "sort", "head", "tail"];

    private static readonly string[] ToolFolders = ["/usr/bin/", "/bin/"];

    private readonly string _folder = Directory.CreateTempSubdirectory("hornbook-start-").FullName;

    public StartScriptTests()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "the script is for bash");
        Directory.CreateDirectory(At("src"));
        Directory.CreateDirectory(At("examples"));
        Directory.CreateDirectory(At("bin"));
        File.WriteAllText(At("src", "A.cs"), "class A;");
        File.WriteAllText(At("src", "B.cs"), "class B;");
        File.WriteAllText(At("Directory.Build.props"), "<Project />");
        File.Copy(Repository.At("global.json"), At("global.json"));
        File.Copy(Repository.At("hornbook"), At("hornbook"));
        foreach (string tool in Tools)
        {
            File.CreateSymbolicLink(At("bin", tool), ToolFolders.Select(f => f + tool).First(File.Exists));
        }
    }

    private int Builds => File.Exists(At("builds")) ? File.ReadAllLines(At("builds")).Length : 0;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Without_dotnet_it_says_what_to_get()
    {
        (int code, string text) = Start("hornbook");
        Assert.Equal(1, code);
        Assert.Contains(".NET SDK 10.0.", text, StringComparison.Ordinal);
        Assert.Contains("https://dotnet.microsoft.com/download", text, StringComparison.Ordinal);
    }

    [Fact]
    public void With_another_sdk_it_says_which_it_needs_and_which_are_there()
    {
        AddDotnet();
        (int code, string text) = StartWith("NO_SDK", "hornbook");
        Assert.Equal(1, code);
        Assert.Contains("10.0.", text, StringComparison.Ordinal);
        Assert.Contains("8.0.100", text, StringComparison.Ordinal);
        Assert.Equal(0, Builds);
    }

    [Fact]
    public void It_builds_once_and_hands_every_argument_on_as_it_is()
    {
        AddDotnet();
        Assert.Contains("first time", Start("hornbook").Text, StringComparison.Ordinal);
        (int code, string text) = Start("hornbook", "predict", "my bench.toml", "*");
        Assert.Equal(0, code);
        Assert.Equal("<predict><my bench.toml><*>", text);
        Assert.Equal(1, Builds);
    }

    [Fact]
    public void It_builds_again_when_a_source_was_changed_or_removed()
    {
        AddDotnet();
        Start("hornbook");
        File.SetLastWriteTimeUtc(At("src", "A.cs"), DateTime.UtcNow.AddSeconds(1));
        Assert.Contains("have changed", Start("hornbook").Text, StringComparison.Ordinal);
        Assert.Equal(2, Builds);

        File.SetLastWriteTimeUtc(At("src", "A.cs"), DateTime.UtcNow.AddMinutes(-1));
        Start("hornbook");
        File.Delete(At("src", "B.cs"));
        Start("hornbook");
        Assert.Equal(3, Builds);
    }

    [Fact]
    public void It_works_through_a_link_from_another_folder()
    {
        AddDotnet();
        Directory.CreateDirectory(At("elsewhere"));
        File.CreateSymbolicLink(At("elsewhere", "second"), "../hornbook");
        File.CreateSymbolicLink(At("elsewhere", "first"), "second");
        Assert.Equal(0, Start("elsewhere/first").Code);
        Assert.Equal(1, Builds);
    }

    [Fact]
    public void Without_internet_it_says_what_to_do_and_tries_again_next_time()
    {
        AddDotnet();
        (int code, string text) = StartWith("OFFLINE", "hornbook");
        Assert.Equal(1, code);
        Assert.Contains("needs the internet", text, StringComparison.Ordinal);
        Assert.Equal(0, Start("hornbook").Code);
        Assert.Equal(2, Builds);
    }

    private string At(params string[] parts) => Path.Combine([_folder, .. parts]);

    private void AddDotnet()
    {
        File.WriteAllText(At("bin", "dotnet"), StandIn);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(At("bin", "dotnet"), UnixFileMode.UserRead | UnixFileMode.UserExecute);
        }
    }

    private (int Code, string Text) Start(string script, params string[] arguments) => StartWith(null, script, arguments);

    private (int Code, string Text) StartWith(string? environment, string script, params string[] arguments)
    {
        ProcessStartInfo start = new(At("bin", "bash"), [At(script), .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetTempPath(),
        };
        start.Environment["PATH"] = At("bin");
        if (environment is not null)
        {
            start.Environment[environment] = "1";
        }

        using Process process = Process.Start(start)!;
        string text = process.StandardOutput.ReadToEnd() + process.StandardError.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, text);
    }
}
