using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Hornbook.Commands;

/// <summary>The library's help, followed by the examples of the command and by what its exit code says.</summary>
internal sealed class HelpWithExamples(HelpAction plain) : SynchronousCommandLineAction
{
    private const int Width = 80;

    /// <inheritdoc/>
    public override bool Terminating => plain.Terminating;

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        plain.MaxWidth = Width;
        int code = plain.Invoke(parseResult);
        TextWriter output = parseResult.InvocationConfiguration.Output;
        if (parseResult.CommandResult.Command is ExampledCommand command)
        {
            WriteExamples(output, command);
        }

        output.WriteLine("Exit codes: 0 fine, 1 bad news, 2 wrong input, 3 failed, 130 stopped by Ctrl-C.");
        return code;
    }

    private static void WriteExamples(TextWriter output, ExampledCommand command)
    {
        output.WriteLine("Examples:");
        foreach ((string line, string does) in command.Examples)
        {
            output.WriteLine($"  {does}:");
            output.WriteLine($"    {line}");
        }

        output.WriteLine();
    }
}
