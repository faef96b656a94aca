using Hornbook.Commands;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Commands;

public sealed class CommandLineTests
{
    public static TheoryData<string> Names => [.. CommandLine.Root().Subcommands.Select(c => c.Name)];

    [Fact]
    public async Task Help_lists_every_command()
    {
        Typed help = await Typed.In("--help");
        Assert.Equal(ExitCode.Fine, help.Code);
        Assert.All(Names, name => Assert.Contains(help.Lines, line => line.StartsWith($"  {name.Data} ", StringComparison.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task The_help_of_a_command_shows_how_it_is_typed_in_80_columns(string name)
    {
        Typed help = await Typed.In(name, "--help");
        Assert.Equal(ExitCode.Fine, help.Code);
        Assert.Contains("Examples:", help.Lines);
        Assert.Contains($"hornbook {name} ", help.Output[help.Output.IndexOf("Examples:", StringComparison.Ordinal)..], StringComparison.Ordinal);
        Assert.All(help.Lines, line => Assert.InRange(line.TrimEnd().Length, 0, 80));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_examples_of_a_command_are_understood(string name)
    {
        ExampledCommand command = (ExampledCommand)CommandLine.Root().Subcommands.Single(c => c.Name == name);
        Assert.NotEmpty(command.Examples);
        Assert.All(command.Examples.SelectMany(e => Calls(e.Line)), call => Assert.Empty(CommandLine.Root().Parse(call).Errors));
    }

    [Fact]
    public async Task A_mistyped_command_gets_a_suggestion_and_is_wrong_input()
    {
        Typed typed = await Typed.In("tabeltop");
        Assert.Equal(ExitCode.BadInput, typed.Code);
        Assert.Empty(typed.Output);
        Assert.Contains("\ntabletop\n", typed.Error, StringComparison.Ordinal);
        Assert.EndsWith("Type 'hornbook --help' to see what fits.\n", typed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bench_file_without_a_command_is_told_how_it_is_opened()
    {
        string bench = Repository.At("examples", "evening-bench.toml");
        Typed typed = await Typed.In(bench);
        Assert.Equal(ExitCode.BadInput, typed.Code);
        Assert.Contains($"type 'hornbook tabletop {bench}' to open that bench", typed.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("to open that bench", (await Typed.In("no-such-bench.toml")).Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("-1")]
    [InlineData("65536")]
    [InlineData("many")]
    public async Task A_port_that_there_cannot_be_is_wrong_input(string port) =>
        Assert.Equal(ExitCode.BadInput, (await Typed.In("tabletop", "--port", port)).Code);

    [Theory]
    [InlineData("bash", "complete -o default -F _hornbook hornbook")]
    [InlineData("zsh", "compdef _hornbook hornbook")]
    [InlineData("fish", "complete -c hornbook -a '(__hornbook_answers)'")]
    public async Task Completion_prints_a_script_for_a_shell(string shell, string lastLine)
    {
        Typed typed = await Typed.In("completion", shell);
        Assert.Equal(ExitCode.Fine, typed.Code);
        Assert.Equal(lastLine, typed.Lines[^1]);
    }

    [Theory]
    [InlineData("tab", "tabletop")]
    [InlineData("completion ", "fish")]
    [InlineData("tabletop --p", "--port")]
    public async Task A_shell_that_asks_gets_the_words_that_fit(string line, string expected)
    {
        Typed typed = await Typed.In($"[suggest:{line.Length}]", line);
        Assert.Contains(expected, typed.Lines);
    }

    // What follows the program's name, up to what belongs to the shell.
    private static IEnumerable<string> Calls(string line) =>
        line.Replace("\\\n", string.Empty, StringComparison.Ordinal).Split("hornbook ", StringSplitOptions.RemoveEmptyEntries).Select(call => call.Split(" && ")[0].TrimEnd(')')).Where(call => call != "source <(");
}
