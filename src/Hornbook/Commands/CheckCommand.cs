using System.CommandLine;
using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Commands.Reports;
using Hornbook.Commands.Typing;

namespace Hornbook.Commands;

/// <summary>check: what would spoil the show.</summary>
internal static class CheckCommand
{
    internal static Command Create()
    {
        Argument<string> bench = BenchArgument.Create();
        Command command = new ExampledCommand("check", "Finds what would spoil the show, worst first, and how to mend it.")
        {
            Examples =
            [
                ("hornbook check examples/evening-bench.toml", "Look a bench over"),
                ("hornbook check my-bench.toml && hornbook tabletop my-bench.toml", "Show it only if nothing spoils the show (exit code 0)"),
            ],
        };
        command.Add(bench);
        Reporting.Attach(command, (typed, progress, cancellation) =>
        {
            BenchPlan plan = BenchArgument.Plan(typed.GetRequiredValue(bench));
            progress.Begin("looking the bench over");
            CheckReport report = CheckReport.Of(plan, BenchFindings.Of(plan, progress, cancellation));
            return new Outcome(report, report.SpoilsCount > 0 ? ExitCode.Spoiled : ExitCode.Fine);
        });
        return command;
    }
}
