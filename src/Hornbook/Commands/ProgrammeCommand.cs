using System.CommandLine;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Programmes;

using Hornbook.Commands.Reports;
using Hornbook.Commands.Typing;

namespace Hornbook.Commands;

/// <summary>programme: where everything stands for each demonstration of a show.</summary>
internal static class ProgrammeCommand
{
    internal static Command Create()
    {
        Argument<string> bench = BenchArgument.Create();
        Argument<string[]> names = new("DEMONSTRATIONS") { Description = "Their names in the order of the show; without any, those of the bench's show.", Arity = ArgumentArity.ZeroOrMore };
        names.CompletionSources.Add(BenchArgument.Names(bench, plan => plan.Demonstrations.Select(d => d.Name)));
        Command command = new ExampledCommand("programme", "Proposes a show: where everything stands and which gain to set, with few changes.")
        {
            Examples =
            [
                ("hornbook programme examples/evening-bench.toml", "All demonstrations in the order of the file"),
                ("hornbook programme examples/evening-bench.toml polarisation distance-law", "Two of them, in this order"),
            ],
        };
        command.Add(bench);
        command.Add(names);
        Reporting.Attach(command, (typed, progress, cancellation) =>
        {
            BenchPlan plan = BenchArgument.Scene(typed.GetRequiredValue(bench)).Plan;
            IReadOnlyList<Demonstration> wanted = Wanted(plan, typed.GetValue(names) ?? []);
            progress.Begin("trying arrangements");
            Programme programme = Programme.Propose(plan, wanted, progress, cancellation);
            return new Outcome(ProgrammeReport.Of(plan.Title, programme), programme.Left.Count > 0 ? ExitCode.Spoiled : ExitCode.Fine);
        });
        return command;
    }

    private static IReadOnlyList<Demonstration> Wanted(BenchPlan plan, string[] names)
    {
        if (plan.Demonstrations.Count == 0)
        {
            throw new BadInputException("this bench has no demonstrations; add some: [[demonstrations]] with a kind and a name");
        }

        return names.Length == 0
            ? Show.Of(plan)
            : [.. names.Select(name => plan.Demonstrations.FirstOrDefault(d => d.Name == name) ?? throw new BadInputException(
                $"\"{name}\" is no demonstration of this bench; type some of {string.Join(", ", plan.Demonstrations.Select(d => d.Name))}"))];
    }
}
