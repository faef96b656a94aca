using System.CommandLine;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Commands.Printing;
using Hornbook.Commands.Reports;
using Hornbook.Commands.Typing;
using Hornbook.Drawing.Figures;

namespace Hornbook.Commands;

/// <summary>predict: what a bench will read and what the audience will hear.</summary>
internal static class PredictCommand
{
    internal static Command Create()
    {
        Argument<string> bench = BenchArgument.Create();
        Argument<string?> name = new("DEMONSTRATION") { Description = "Its name in the bench file; without one, the bench as it stands.", Arity = ArgumentArity.ZeroOrOne };
        name.CompletionSources.Add(BenchArgument.Names(bench, plan => plan.Demonstrations.Select(d => d.Name)));
        Option<bool> all = new("--all") { Description = "All demonstrations of the bench." };
        Option<bool> explain = new("--explain") { Description = "Say beside each curve where to stand things, what spoils it, and what it means." };
        Option<bool> exchange = new("--exchange") { Description = "Say what exchanging source and receiver would change: a sign of the panels' error." };
        Option<string?> figure = OutputFile.Figure("Draw the curve into a file");
        Option<string?> csv = new("--csv") { Description = "Write every point into a file for spreadsheets.", HelpName = "FILE" };
        Command command = new ExampledCommand("predict", "Predicts what will be read and heard, with its band.")
        {
            Examples =
            [
                ("hornbook predict examples/evening-bench.toml", "The bench as it stands"),
                ("hornbook predict examples/evening-bench.toml beam-width --figure beam.svg", "One demonstration, with its figure"),
                ("hornbook predict examples/evening-bench.toml polarisation --explain", "With what a presenter should know of it"),
                ("hornbook predict examples/evening-bench.toml --all --csv show.csv", "All of them, each with its table"),
            ],
        };
        command.Add(bench);
        command.Add(name);
        command.Add(all);
        command.Add(explain);
        command.Add(exchange);
        command.Add(figure);
        command.Add(csv);
        Reporting.Attach(command, (typed, progress, cancellation) =>
        {
            Scene scene = BenchArgument.Scene(typed.GetRequiredValue(bench));
            IReadOnlyList<Demonstration> wanted = Wanted(scene.Plan, typed.GetValue(name), typed.GetValue(all));
            Files files = new(typed.GetValue(figure), typed.GetValue(csv), typed.InvocationConfiguration.Error);
            files.RequireSomethingToWrite(wanted.Count);
            bool explained = typed.GetValue(explain);
            RequireSomethingToExplain(explained, wanted.Count);
            RequireNothingMoves(typed.GetValue(exchange), wanted.Count);
            Prediction[] predictions = [.. wanted.Select(d => Predicted(scene, d, progress, cancellation))];
            files.Write(scene.Plan.Title, predictions);
            return new Outcome(new PredictionReport(scene, predictions, explained, typed.GetValue(exchange)));
        });
        return command;
    }

    private static void RequireSomethingToExplain(bool explained, int demonstrations)
    {
        if (explained && demonstrations == 0)
        {
            throw new BadInputException("--explain needs a demonstration, or --all");
        }
    }

    private static void RequireNothingMoves(bool exchanged, int demonstrations)
    {
        if (exchanged && demonstrations > 0)
        {
            throw new BadInputException("--exchange is for the bench as it stands: leave out the demonstration");
        }
    }

    private static IReadOnlyList<Demonstration> Wanted(BenchPlan plan, string? name, bool all)
    {
        if (all)
        {
            return plan.Demonstrations;
        }

        if (name is null)
        {
            return [];
        }

        return [plan.Demonstrations.FirstOrDefault(d => d.Name == name) ?? throw new BadInputException(
            $"\"{name}\" is no demonstration of this bench; type one of {Listed(plan)}, or --all")];
    }

    private static string Listed(BenchPlan plan) => plan.Demonstrations.Count == 0
        ? "none (it has none)"
        : string.Join(", ", plan.Demonstrations.Select(d => d.Name));

    private static Prediction Predicted(Scene scene, Demonstration demonstration, ProgressLine progress, CancellationToken cancellation)
    {
        progress.Begin($"predicting {demonstration.Name}");
        return Prediction.Of(scene, demonstration, progress, cancellation);
    }

    // What --figure and --csv ask for.
    private sealed record Files(string? Figure, string? Csv, TextWriter Error)
    {
        internal void RequireSomethingToWrite(int demonstrations)
        {
            if (demonstrations == 0 && (Figure ?? Csv) is not null)
            {
                throw new BadInputException("--figure and --csv need a demonstration, or --all");
            }
        }

        internal void Write(string title, Prediction[] predictions)
        {
            foreach (Prediction prediction in predictions)
            {
                string name = prediction.Demonstration.Name;
                if (Figure is not null)
                {
                    OutputFile.Write(OutputFile.For(Figure, name, predictions.Length), CurveFigure.Of(title, prediction), Error);
                }

                if (Csv is not null)
                {
                    OutputFile.Write(OutputFile.For(Csv, name, predictions.Length), CurveCsv.Of(prediction.Curve), Error);
                }
            }
        }
    }
}
