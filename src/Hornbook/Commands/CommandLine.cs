using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Hornbook.Commands;

/// <summary>The command line: the commands put together, and what all of them have in common.</summary>
internal static class CommandLine
{
    private const string Purpose =
        "Plans and predicts demonstrations with microwaves on a table: from a bench file to what the audience will hear. "
        + "Without a command it opens the tabletop page with the example bench.";

    /// <summary>Runs the program and gives its exit code.</summary>
    internal static async Task<int> RunAsync(string[] arguments)
    {
        ParseResult parsed = Root().Parse(arguments);
        if (parsed.Action is not ParseErrorAction mistake)
        {
            return await parsed.InvokeAsync(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
        }

        mistake.ShowHelp = false;
        mistake.Invoke(parsed);
        return (int)ExitCode.BadInput;
    }

    /// <summary>The root with all commands.</summary>
    internal static RootCommand Root()
    {
        RootCommand root = new(Purpose)
        {
            TabletopCommand.Create(),
            CompletionCommand.Create(),
        };
        root.SetAction((_, cancellation) => TabletopCommand.ServeAsync(null, TabletopCommand.DefaultPort, true, cancellation));
        HelpOption help = root.Options.OfType<HelpOption>().Single();
        help.Action = new HelpWithExamples((HelpAction)help.Action!);
        return root;
    }
}
