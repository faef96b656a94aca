using System.CommandLine;
using System.CommandLine.Completions;
using Hornbook.Bench.Files;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;

namespace Hornbook.Commands.Typing;

/// <summary>The bench file that a command is about.</summary>
internal static class BenchArgument
{
    /// <summary>The argument BENCH.</summary>
    internal static Argument<string> Create() => new("BENCH") { Description = "The bench file (*.toml)." };

    /// <summary>The plan of a bench file.</summary>
    /// <exception cref="BadInputException">There is something wrong in the file: all of it, each with its place.</exception>
    internal static BenchPlan Plan(string path)
    {
        BenchFile file = BenchFile.Read(path);
        return file.Plan ?? throw Wrong(file);
    }

    /// <summary>What is wrong with a file that is not usable or whose guides carry no wave.</summary>
    internal static BadInputException Wrong(BenchFile file) => new(file.IsUsable
        ? $"{file.Name}: a guide carries no wave at this frequency; 'hornbook check {file.Name}' says which, and what to do"
        : string.Join('\n', file.Problems.Select(p => p.Message)));

    /// <summary>A bench made ready to compute.</summary>
    /// <exception cref="BadInputException">The file is wrong, or a guide of the bench carries no wave.</exception>
    internal static Scene Scene(string path)
    {
        BenchFile file = BenchFile.Read(path);
        return file.Plan is { } plan && Bench.Readings.Scene.CanRead(plan) ? Bench.Readings.Scene.Of(plan) : throw Wrong(file);
    }

    /// <summary>Lets a shell complete names that stand in the bench file typed before.</summary>
    internal static Func<CompletionContext, IEnumerable<CompletionItem>> Names(Argument<string> bench, Func<BenchPlan, IEnumerable<string>> names) =>
        context => BenchFile.Read(context.ParseResult.GetValue(bench) ?? string.Empty).Plan is { } plan
            ? names(plan).Select(name => new CompletionItem(name))
            : [];
}
