using Hornbook.Bench.Files;

namespace Hornbook.Tabletop.Benches;

/// <summary>A bench file as it is listed.</summary>
/// <param name="FileName">Without a folder.</param>
/// <param name="Changed">When it was written last.</param>
/// <param name="Title">Of the bench; null where it cannot be read.</param>
/// <param name="Frequency">Of its source [Hz]; null where it cannot be read.</param>
/// <param name="Problem">The first thing that is wrong, with its place in the file; null where it can be opened.</param>
public sealed record BenchEntry(string FileName, DateTimeOffset Changed, string? Title, double? Frequency, string? Problem)
{
    /// <summary>Whether it can be laid on the desk.</summary>
    public bool CanOpen => Problem is null;

    internal static BenchEntry Of(string fileName, DateTimeOffset changed, BenchFile file) =>
        new(fileName, changed, file.Plan?.Title, file.Plan?.Frequency, Wrong(file));

    private static string? Wrong(BenchFile file) => file.Problems is [FileProblem first, ..]
        ? $"line {first.Line}, column {first.Column}: {first.Read}; {first.Fits}"
        : Desk.BenchDesk.Refusal(file);
}
