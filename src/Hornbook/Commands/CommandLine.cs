using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using Hornbook.Tabletop;

namespace Hornbook.Commands;

/// <summary>The command line: the commands put together, and what all of them have in common.</summary>
internal static class CommandLine
{
    private const string Purpose =
        "Plans and predicts demonstrations with microwaves on a table: from a bench file to what the audience will hear. "
        + "Without a command it opens the tabletop page with the example bench.";

    /// <summary>Runs the program and gives its exit code.</summary>
    internal static Task<int> RunAsync(string[] arguments) => RunAsync(arguments, Console.Out, Console.Error);

    /// <summary>Runs the program with its two streams given.</summary>
    internal static async Task<int> RunAsync(string[] arguments, TextWriter output, TextWriter error)
    {
        try
        {
            ParseResult typed = Root().Parse(arguments);
            if (typed.Action is ParseErrorAction)
            {
                return Refuse(Narrowed(typed), error);
            }

            return await typed.InvokeAsync(new InvocationConfiguration { EnableDefaultExceptionHandler = false, Output = output, Error = error });
        }
        catch (Exception exception)
        {
            return (int)Failure.Say(exception, error);
        }
    }

    /// <summary>The root with all commands.</summary>
    internal static RootCommand Root()
    {
        RootCommand root = new(Purpose)
        {
            CheckCommand.Create(),
            PredictCommand.Create(),
            ProgrammeCommand.Create(),
            AntennaCommand.Create(),
            ChooseCommand.Create(),
            ExposureCommand.Create(),
            GuideCommand.Create(),
            PanelCommand.Create(),
            GridCommand.Create(),
            TabletopCommand.Create(),
            CompletionCommand.Create(),
        };
        root.SetAction((_, cancellation) => TabletopHost.RunAsync(null, TabletopHost.DefaultPort, openBrowser: true, shared: false, cancellation));
        HelpOption help = root.Options.OfType<HelpOption>().Single();
        help.Action = new HelpWithExamples((HelpAction)help.Action!);
        help.Aliases.Clear();
        help.Aliases.Add("-h");
        return root;
    }

    // After a mistyped command nothing of the rest can be understood, and nothing need be said of it.
    private static ParseResult Narrowed(ParseResult typed) =>
        typed.CommandResult.Command is RootCommand && typed.UnmatchedTokens.Count > 1 ? Root().Parse([typed.UnmatchedTokens[0]]) : typed;

    // The library's own words and its guess at what was meant, all on the error stream.
    private static int Refuse(ParseResult typed, TextWriter error)
    {
        if (typed.Action is ParseErrorAction mistake)
        {
            mistake.ShowHelp = false;
        }

        typed.Invoke(new InvocationConfiguration { Output = error, Error = error });
        if (typed.CommandResult.Command is RootCommand && typed.UnmatchedTokens is [string file, ..] && File.Exists(file))
        {
            error.WriteLine($"It is a file: type 'hornbook tabletop {file}' to open that bench, or another command before it.");
        }

        string command = typed.CommandResult.Command is RootCommand ? string.Empty : $" {typed.CommandResult.Command.Name}";
        error.WriteLine($"Type 'hornbook{command} --help' to see what fits.");
        return (int)ExitCode.BadInput;
    }
}
