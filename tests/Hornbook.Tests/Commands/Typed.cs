using Hornbook.Commands;

namespace Hornbook.Tests.Commands;

/// <summary>A command line run within the test, with its two streams caught.</summary>
internal sealed record Typed(ExitCode Code, string Output, string Error)
{
    /// <summary>The output's lines.</summary>
    internal string[] Lines => Output.TrimEnd('\n').Split('\n');

    /// <summary>Runs it.</summary>
    internal static async Task<Typed> In(params string[] arguments)
    {
        using StringWriter output = new() { NewLine = "\n" };
        using StringWriter error = new() { NewLine = "\n" };
        int code = await CommandLine.RunAsync(arguments, output, error);
        return new Typed((ExitCode)code, output.ToString().ReplaceLineEndings("\n"), error.ToString().ReplaceLineEndings("\n"));
    }
}
