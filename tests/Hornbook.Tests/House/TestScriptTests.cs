using Xunit;

namespace Hornbook.Tests.House;

/// <summary>./test, with stand-ins for dotnet and the package manager.</summary>
public sealed class TestScriptTests : IDisposable
{
    // A project's sum, as the platform's runner prints it; the exit code as it gives it.
    private const string Dotnet = """
        #!/usr/bin/env bash
        echo "$1" >> asked
        case $1 in
          format) [ -z "${ILL_FORMED:-}" ] || exit 2 ;;
          test)
            printf 'Test run summary:\n  total: 5\n  failed: %s\n  succeeded: %s\n  skipped: 1\n' "$([ "$3" = "${FAILED:-}" ] && echo 1 || echo 0)" "${PASSED:-4}"
            [ "$3" != "${BROKEN:-}" ] || exit 7 ;;
        esac
        """;

    private const string AptGet = """
        #!/usr/bin/env bash
        echo "$*" >> installs
        [ "$1" != install ] || { touch chromium && chmod +x chromium; }
        """;

    private readonly ScriptSandbox _sandbox = new("env", "dirname", "mkdir", "touch", "mv", "tee", "awk", "tail", "chmod");

    public TestScriptTests()
    {
        _sandbox.Write("test", Checkout.File("test").Text.Replace("/usr/bin/chromium", "./chromium", StringComparison.Ordinal));
        _sandbox.Write("tests/Hornbook.Tests/one.cs", string.Empty);
        _sandbox.Write("tests/Hornbook.Browser.Tests/one.cs", string.Empty);
        _sandbox.StandIn("dotnet", Dotnet);
        _sandbox.StandIn("id", "echo 0");
    }

    public void Dispose() => _sandbox.Dispose();

    [Fact]
    public void It_restores_formats_builds_and_tests_and_ends_with_one_plain_line()
    {
        HaveChromium();
        (int code, string text) = _sandbox.Run("test");
        Assert.Equal(0, code);
        Assert.Equal("8 passed, 0 failed, 2 skipped", LastLine(text));
        Assert.Equal(["restore", "format", "build", "test", "test"], File.ReadAllLines(_sandbox.At("asked")));
    }

    [Theory]
    [InlineData("FAILED=tests/Hornbook.Tests", "8 passed, 1 failed, 2 skipped")]
    [InlineData("FAILED=tests/Hornbook.Browser.Tests", "8 passed, 1 failed, 2 skipped")]
    [InlineData("PASSED=0", "0 passed, 0 failed, 2 skipped")]
    [InlineData("BROKEN=tests/Hornbook.Tests", "8 passed, 0 failed, 2 skipped")]
    [InlineData("BROKEN=tests/Hornbook.Browser.Tests", "8 passed, 0 failed, 2 skipped")]
    public void It_fails_when_a_test_fails_none_runs_or_the_runner_breaks(string variable, string line)
    {
        HaveChromium();
        (int code, string text) = _sandbox.Run("test", variable);
        Assert.NotEqual(0, code);
        Assert.Equal(line, LastLine(text));
    }

    [Fact]
    public void It_fails_before_building_when_the_format_is_wrong()
    {
        Assert.NotEqual(0, _sandbox.Run("test", "ILL_FORMED=1").Code);
        Assert.Equal(["restore", "format"], File.ReadAllLines(_sandbox.At("asked")));
    }

    [Fact]
    public void A_missing_browser_is_installed_from_the_systems_packages()
    {
        _sandbox.StandIn("apt-get", AptGet);
        Assert.Equal(0, _sandbox.Run("test", "CI=true").Code);
        Assert.Contains("chromium", File.ReadAllText(_sandbox.At("installs")), StringComparison.Ordinal);
        Assert.Equal(2, _sandbox.Count("installs"));
    }

    [Fact]
    public void Where_it_may_not_install_it_says_what_to_type_and_goes_on()
    {
        _sandbox.StandIn("apt-get", AptGet);
        _sandbox.StandIn("id", "echo 1000");
        _sandbox.StandIn("sudo", "exit 1");
        (int code, string text) = _sandbox.Run("test");
        Assert.Equal(0, code);
        Assert.Contains("sudo apt-get update && sudo apt-get install -y chromium", text, StringComparison.Ordinal);
        Assert.Equal(0, _sandbox.Count("installs"));
    }

    [Fact]
    public void In_continuous_integration_a_missing_browser_is_a_failure()
    {
        (int code, string text) = _sandbox.Run("test", "CI=true");
        Assert.NotEqual(0, code);
        Assert.Contains("Under CI=true that is an error", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_browser_of_ones_own_is_not_installed_over()
    {
        _sandbox.StandIn("apt-get", AptGet);
        Assert.Contains("no Chromium at /nowhere", _sandbox.Run("test", "HORNBOOK_CHROMIUM=/nowhere").Text, StringComparison.Ordinal);
        Assert.Equal(0, _sandbox.Count("installs"));
    }

    private static string LastLine(string text) => text.TrimEnd().Split('\n')[^1];

    private void HaveChromium() => _sandbox.StandIn("../chromium", "exit 0");
}
