using Hornbook.Testing;

namespace Hornbook.Tests.House;

/// <summary>A text file of the checkout.</summary>
/// <param name="Path">From the root, with slashes.</param>
/// <param name="Text">What it holds.</param>
internal sealed record SourceText(string Path, string Text)
{
    /// <summary>Its lines with their numbers, from 1.</summary>
    public IEnumerable<(int Number, string Line)> Lines => Text.Split('\n').Select((line, index) => (index + 1, line));

    /// <summary>The folder it is in, from the root, with slashes.</summary>
    public string Folder => Path[..Math.Max(0, Path.LastIndexOf('/'))];

    /// <summary>Its name without folder and endings.</summary>
    public string Stem => Path[(Path.LastIndexOf('/') + 1)..].Split('.')[0];
}

/// <summary>The text files of the checkout, without what was built.</summary>
internal static class Checkout
{
    private static readonly HashSet<string> NotOurs =
        [".git", ".vs", ".idea", "artifacts", "bin", "obj", "TestResults", "BenchmarkDotNet.Artifacts"];

    private static readonly HashSet<string> NotText = [".png", ".ttf", ".woff2", ".ico", ".pdf", ".wav", ".gz"];

    /// <summary>All of them, in order of their paths.</summary>
    public static IReadOnlyList<SourceText> Files { get; } =
        [.. Walk(new DirectoryInfo(Repository.Root)).OrderBy(f => f.Path, StringComparer.Ordinal)];

    /// <summary>Those below a folder that have one of the endings.</summary>
    public static IEnumerable<SourceText> Under(string folder, params string[] endings) =>
        Files.Where(f => f.Path.StartsWith(folder, StringComparison.Ordinal) && endings.Any(e => f.Path.EndsWith(e, StringComparison.Ordinal)));

    /// <summary>The pages people read.</summary>
    public static IEnumerable<SourceText> Pages =>
        Files.Where(f => f.Path.EndsWith(".md", StringComparison.Ordinal) && (!f.Path.Contains('/') || f.Path.StartsWith("docs/", StringComparison.Ordinal)));

    /// <summary>One of them.</summary>
    public static SourceText File(string path) =>
        Files.FirstOrDefault(f => f.Path == path) ?? throw new FileNotFoundException($"{path} is not in the checkout");

    private static IEnumerable<SourceText> Walk(DirectoryInfo folder) =>
        folder.EnumerateDirectories().Where(d => !NotOurs.Contains(d.Name)).SelectMany(Walk)
            .Concat(folder.EnumerateFiles().Where(IsText).Select(Read));

    private static bool IsText(FileInfo file) =>
        !NotText.Contains(file.Extension) && !file.Name.Contains(".received.", StringComparison.Ordinal);

    private static SourceText Read(FileInfo file) => new(
        Path.GetRelativePath(Repository.Root, file.FullName).Replace('\\', '/'),
        System.IO.File.ReadAllText(file.FullName).ReplaceLineEndings("\n"));
}
