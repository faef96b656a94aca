using System.CommandLine;
using Hornbook.Commands.Printing;

namespace Hornbook.Commands;

/// <summary>Makes a command out of a function from what was typed to an outcome: as text, or with --json for programs.</summary>
internal static class Reporting
{
    /// <summary>What a command does.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="progress">Told what is under way.</param>
    /// <param name="cancellation">Ctrl-C.</param>
    internal delegate Outcome Work(ParseResult typed, ProgressLine progress, CancellationToken cancellation);

    /// <summary>Gives a command its work and the option --json.</summary>
    internal static void Attach(Command command, Work work)
    {
        Option<bool> json = new("--json") { Description = "Print JSON: keys end in their unit, null where there is no finite number." };
        command.Add(json);
        command.SetAction((typed, cancellation) => Task.Run(() => Run(typed, typed.GetValue(json), work, cancellation), CancellationToken.None));
    }

    private static int Run(ParseResult typed, bool json, Work work, CancellationToken cancellation)
    {
        Outcome outcome;
        using (ProgressLine progress = ProgressLine.On(typed.InvocationConfiguration.Error))
        {
            outcome = work(typed, progress, cancellation);
        }

        TextWriter output = typed.InvocationConfiguration.Output;
        if (json)
        {
            output.Write(JsonReport.Text(outcome.Report));
        }
        else
        {
            TextPage page = new(Terminal.TakesStyle(output));
            outcome.Report.Describe(page);
            page.WriteTo(output);
        }

        return (int)outcome.Code;
    }
}
