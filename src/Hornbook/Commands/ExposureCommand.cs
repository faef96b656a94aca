using System.CommandLine;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Commands.Reports;
using Hornbook.Commands.Typing;
using Hornbook.Drawing.Figures;
using Hornbook.Physics.Exposure;

namespace Hornbook.Commands;

/// <summary>exposure: how far to keep people from the source.</summary>
internal static class ExposureCommand
{
    private const string Strictest = "strictest";

    internal static Command Create()
    {
        Argument<string> bench = BenchArgument.Create();
        Option<string?> limit = new("--limit") { Description = "Name of the limit, or 'strictest'; otherwise the one that the bench file chooses.", HelpName = "NAME" };
        limit.CompletionSources.Add([Strictest, .. ExposureLimits.All.Select(l => l.Id)]);
        Option<string?> figure = OutputFile.Figure("Draw the table from above with the keep-out line into a file");
        Command command = new ExampledCommand("exposure", "Says how far to keep people from the source, by every published limit.")
        {
            Examples =
            [
                ("hornbook exposure examples/evening-bench.toml --figure keep-out.svg", "By the limit that the bench file chooses, with a plan"),
                ("hornbook exposure examples/evening-bench.toml --limit us-public", "By another limit"),
            ],
        };
        command.Add(bench);
        command.Add(limit);
        command.Add(figure);
        Reporting.Attach(command, (typed, progress, cancellation) =>
        {
            Scene scene = BenchArgument.Scene(typed.GetRequiredValue(bench));
            (ExposureLimit chosen, string because) = Choose(scene.Plan, typed.GetValue(limit));
            progress.Begin("computing power densities");
            ExposureField field = ExposureField.Of(scene.Source, scene.Plan.Source.WorstCasePower);
            if (typed.GetValue(figure) is { } path)
            {
                OutputFile.Write(path, KeepOutFigure.Of(scene.Plan, field, chosen), typed.InvocationConfiguration.Error);
            }

            cancellation.ThrowIfCancellationRequested();
            return new Outcome(ExposureReport.Of(scene, field, chosen, because));
        });
        return command;
    }

    private static (ExposureLimit Limit, string Because) Choose(BenchPlan plan, string? typed)
    {
        string id = typed ?? plan.ExposureLimit;
        if (id == Strictest)
        {
            ExposureLimit? strictest = ExposureLimits.Strictest(ExposureGroup.Public, plan.Frequency);
            return (strictest ?? throw new BadInputException("no published limit that is known covers this frequency"), "the strictest for the public that is in force anywhere");
        }

        ExposureLimit limit = ExposureLimits.Find(id) ?? throw new BadInputException($"\"{id}\" is no limit; type one of\n  {string.Join("\n  ", ExposureLimits.All.Select(l => l.Id))}");
        return limit.Band.Contains(plan.Frequency)
            ? (limit, typed is null ? "as the bench file chooses" : "as typed")
            : throw new BadInputException($"{id} does not cover this frequency");
    }
}
