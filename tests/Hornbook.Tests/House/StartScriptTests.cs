using Xunit;

namespace Hornbook.Tests.House;

/// <summary>./hornbook, with a stand-in for dotnet that writes down what it is asked.</summary>
public sealed class StartScriptTests : IDisposable
{
    private const string Dotnet = """
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

    private readonly ScriptSandbox _sandbox =
        new("env", "dirname", "readlink", "sed", "find", "mkdir", "mktemp", "mv", "rm", "touch", "grep", "sort", "head", "tail");

    public StartScriptTests()
    {
        _sandbox.Take("hornbook");
        _sandbox.Take("global.json");
        _sandbox.Write("Directory.Build.props", "<Project />");
        _sandbox.Write("examples/a.toml", string.Empty);
        _sandbox.Write("src/A.cs", "class A;");
        _sandbox.Write("src/B.cs", "class B;");
    }

    private int Builds => _sandbox.Count("builds");

    public void Dispose() => _sandbox.Dispose();

    [Fact]
    public void Without_dotnet_it_says_what_to_get()
    {
        (int code, string text) = _sandbox.Run("hornbook");
        Assert.Equal(1, code);
        Assert.Contains(".NET SDK 10.0.", text, StringComparison.Ordinal);
        Assert.Contains("https://dotnet.microsoft.com/download", text, StringComparison.Ordinal);
    }

    [Fact]
    public void With_another_sdk_it_says_which_it_needs_and_which_are_there()
    {
        _sandbox.StandIn("dotnet", Dotnet);
        (int code, string text) = _sandbox.Run("hornbook", "NO_SDK=1");
        Assert.Equal(1, code);
        Assert.Contains("10.0.", text, StringComparison.Ordinal);
        Assert.Contains("8.0.100", text, StringComparison.Ordinal);
        Assert.Equal(0, Builds);
    }

    [Fact]
    public void It_builds_once_and_hands_every_argument_on_as_it_is()
    {
        _sandbox.StandIn("dotnet", Dotnet);
        Assert.Contains("first time", _sandbox.Run("hornbook").Text, StringComparison.Ordinal);
        (int code, string text) = _sandbox.Run("hornbook", null, "predict", "my bench.toml", "*");
        Assert.Equal(0, code);
        Assert.Equal("<predict><my bench.toml><*>", text);
        Assert.Equal(1, Builds);
    }

    [Fact]
    public void It_builds_again_when_a_source_was_changed_or_removed()
    {
        _sandbox.StandIn("dotnet", Dotnet);
        _sandbox.Run("hornbook");
        File.SetLastWriteTimeUtc(_sandbox.At("src", "A.cs"), DateTime.UtcNow.AddSeconds(1));
        Assert.Contains("have changed", _sandbox.Run("hornbook").Text, StringComparison.Ordinal);
        Assert.Equal(2, Builds);

        File.SetLastWriteTimeUtc(_sandbox.At("src", "A.cs"), DateTime.UtcNow.AddMinutes(-1));
        _sandbox.Run("hornbook");
        Assert.Equal(2, Builds);
        File.Delete(_sandbox.At("src", "B.cs"));
        _sandbox.Run("hornbook");
        Assert.Equal(3, Builds);
    }

    [Fact]
    public void It_works_through_links_from_another_folder()
    {
        _sandbox.StandIn("dotnet", Dotnet);
        Directory.CreateDirectory(_sandbox.At("elsewhere"));
        File.CreateSymbolicLink(_sandbox.At("elsewhere", "second"), "../hornbook");
        File.CreateSymbolicLink(_sandbox.At("elsewhere", "first"), "second");
        Assert.Equal(0, _sandbox.Run("elsewhere/first").Code);
        Assert.Equal(1, Builds);
    }

    [Fact]
    public void Without_internet_it_says_what_to_do_and_tries_again_next_time()
    {
        _sandbox.StandIn("dotnet", Dotnet);
        (int code, string text) = _sandbox.Run("hornbook", "OFFLINE=1");
        Assert.Equal(1, code);
        Assert.Contains("needs the internet", text, StringComparison.Ordinal);
        Assert.Equal(0, _sandbox.Run("hornbook").Code);
        Assert.Equal(2, Builds);
    }
}
