using System.Diagnostics.CodeAnalysis;
using Hornbook.Bench.Files.Binding;
using Hornbook.Bench.Files.Editing;
using Hornbook.Bench.Files.Format;
using Hornbook.Bench.Files.Merging;
using Hornbook.Bench.Files.Quantities;
using Hornbook.Bench.Files.Syntax;
using Hornbook.Bench.Layout;

namespace Hornbook.Bench.Files;

/// <summary>A bench file: its text, and the plan that it states or everything that is wrong with it.</summary>
/// <remarks>Immutable. An edit gives a new one; comments, order and spacing of the text stay.</remarks>
public sealed class BenchFile
{
    /// <summary>The longest file that is read [bytes].</summary>
    public const int LongestFile = 256 * 1024;

    /// <summary>The most problems that are told of one file: nobody corrects more at a sitting.</summary>
    public const int MostProblems = 200;

    private const char ByteOrderMark = '\uFEFF';

    private BenchFile(string name, string text, BenchPlan? plan, IReadOnlyList<FileProblem> problems)
    {
        Name = name;
        Text = text;
        Plan = plan;
        Problems = problems;
    }

    /// <summary>Name of the file, as messages give it.</summary>
    public string Name { get; }

    /// <summary>The text.</summary>
    public string Text { get; }

    /// <summary>The plan; null where something is wrong.</summary>
    public BenchPlan? Plan { get; }

    /// <summary>Everything that is wrong, in the order of the file; empty where nothing is.</summary>
    public IReadOnlyList<FileProblem> Problems { get; }

    /// <summary>Whether there is a plan.</summary>
    [MemberNotNullWhen(true, nameof(Plan))]
    public bool IsUsable => Plan is not null;

    /// <summary>Reads a text.</summary>
    /// <param name="text">The whole text.</param>
    /// <param name="fileName">What messages call it.</param>
    public static BenchFile Parse(string text, string fileName)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(fileName);
        if (text.Length > LongestFile)
        {
            return Refused(fileName, text, new PlacedProblem(Place.Start, new Misreading(
                $"the file has {text.Length} characters", $"a bench file has {LongestFile} at most", "take away what is no bench")));
        }

        if (Unpaired(text) is int half)
        {
            return Refused(fileName, text, new PlacedProblem(new LineIndex(text).At(half, 1), new Misreading(
                "half a letter stands alone (an unpaired surrogate)", "a bench file is Unicode text", "type the letter again")));
        }

        string body = text.StartsWith(ByteOrderMark) ? text[1..] : text;
        TomlText toml = TomlText.Read(body);
        ProblemList problems = new();
        BoundTable bound = new Binder(problems, toml.Broken).Bind(toml.Root, BenchFormat.File);
        new ConsistencyChecks(problems, toml.Problems.Count == 0).Check(bound);
        return toml.Problems.Count + problems.Found.Count == 0
            ? new BenchFile(fileName, text, PlanComposer.Compose(bound), [])
            : Refused(fileName, text, [.. toml.Problems, .. problems.Found]);
    }

    /// <summary>Reads a file.</summary>
    /// <param name="path">Where it is.</param>
    /// <returns>What it says, or what is wrong; a file that cannot be opened or is no text has that as its one problem.</returns>
    public static BenchFile Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        TextFile file = TextFile.Read(path, LongestFile);
        return file.Wrong is PlacedProblem wrong ? Refused(path, file.Text, wrong) : Parse(file.Text, path);
    }

    /// <summary>The file with values or whole tables changed; all else in the text stays, character by character.</summary>
    /// <param name="changes">What to change, in order. A value that does not fit gives a file with that problem.</param>
    /// <exception cref="InvalidOperationException">This file is not usable: there is no telling where its values stand.</exception>
    /// <exception cref="ArgumentException">The format has no such key, or the file no such table, or a new table's name is taken.</exception>
    public BenchFile Edit(params IEnumerable<BenchChange> changes)
    {
        ArgumentNullException.ThrowIfNull(changes);
        if (!IsUsable)
        {
            throw new InvalidOperationException($"{Name} has {Problems.Count} problems; they are corrected before it is edited");
        }

        string mark = Text.StartsWith(ByteOrderMark) ? Text[..1] : string.Empty;
        return Parse(mark + changes.Aggregate(Text[mark.Length..], TextEditor.Apply), Name);
    }

    /// <summary>Whether another file states the same bench: every value alike but those of its demonstrations. Both are usable.</summary>
    public bool StandsAs(BenchFile other) => BenchLikeness.StandsAs(this, other);

    /// <summary>Whether another file has the same things, wherever they stand and however high the gain is set. Both are usable.</summary>
    public bool HasThingsOf(BenchFile other) => BenchLikeness.HasThingsOf(this, other);

    /// <summary>Writes the text to a file, whole or not at all.</summary>
    /// <exception cref="IOException">It cannot be written; the old file is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; the old file is as it was.</exception>
    public void Save(string path) => AtomicFile.Write(path, Text);

    /// <summary>Where a surrogate stands without its partner, which no UTF-8 file can hold; null where none does.</summary>
    private static int? Unpaired(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            bool pair = i + 1 < text.Length && char.IsSurrogatePair(text[i], text[i + 1]);
            if (char.IsSurrogate(text[i]) && !pair)
            {
                return i;
            }

            i += pair ? 1 : 0;
        }

        return null;
    }

    private static BenchFile Refused(string name, string text, params IEnumerable<PlacedProblem> problems) => new(name, text, null, [
        .. problems.Distinct().OrderBy(problem => problem.Place.Line).ThenBy(problem => problem.Place.Column).Take(MostProblems)
            .Select(found => new FileProblem(name, found.Place.Line, found.Place.Column, found.Place.Length, found.What.Read, found.What.Fits, found.What.Type)),
    ]);
}
