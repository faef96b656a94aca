using System.Text.RegularExpressions;
using Xunit;

namespace Hornbook.Tests.House;

/// <summary>A file is about one thing and stands where its name says.</summary>
public sealed partial class FileRuleTests
{
    private const int LongestFile = 400;

    private static readonly string[] Folders = ["src/", "tests/", "benchmarks/"];

    private static IEnumerable<SourceText> Code =>
        Folders.SelectMany(f => Checkout.Under(f, ".cs", ".razor", ".js", ".css"));

    [Fact]
    public void No_file_is_longer_than_400_lines() => Offences.None(Code.SelectMany(TooLong));

    [Fact]
    public void The_namespace_is_the_folder() => Offences.None(Code.SelectMany(Misplaced));

    [Fact]
    public void A_file_holds_a_type_of_its_own_name() => Offences.None(Checkout.Under("src/", ".cs").SelectMany(Misnamed));

    [Fact]
    public void Nothing_is_called_a_helper_a_manager_or_a_utility() =>
        Offences.None(Code.Where(f => VagueName().IsMatch(f.Path)).Select(f => $"{f.Path}: a name that says nothing"));

    [Fact]
    public void Nothing_is_left_undone() => Offences.None(Checkout.Under("src/", ".cs", ".razor", ".js").SelectMany(Undone));

    [Fact]
    public void Warnings_are_switched_off_only_with_a_reason() => Offences.None(Code.SelectMany(Silenced));

    [Fact]
    public void Offences_are_seen()
    {
        Assert.Single(TooLong(new SourceText("src/A.cs", string.Concat(Enumerable.Repeat("x\n", LongestFile + 1)))));
        Assert.Single(Misplaced(new SourceText("src/Hornbook.Physics/Media/Metal.cs", "namespace Hornbook.Physics.Metals;\n")));
        Assert.Empty(Misplaced(new SourceText("src/Hornbook/Commands/Serve.cs", "namespace Hornbook.Commands;\n")));
        Assert.Single(Misnamed(new SourceText("src/Hornbook.Physics/Metal.cs", "public sealed record Wood;\n")));
        Assert.Single(Undone(new SourceText("src/A.cs", "throw new " + "NotImplementedException();")));
        Assert.Single(Silenced(new SourceText("src/A.cs", "#pragma warning " + "disable CA1822\n")));
        Assert.Matches(VagueName(), "src/Hornbook.Bench/FileUtils.cs");
    }

    private static IEnumerable<string> TooLong(SourceText file)
    {
        int lines = file.Text.AsSpan().Count('\n');
        return lines > LongestFile ? [$"{file.Path}: {lines} lines"] : [];
    }

    private static IEnumerable<string> Misplaced(SourceText file)
    {
        string expected = string.Join('.', file.Folder.Split('/')[1..]);
        return
            from line in file.Lines
            let match = Namespace().Match(line.Line)
            where match.Success && match.Groups[1].Value != expected
            select $"{file.Path}:{line.Number}: namespace {match.Groups[1].Value}, the folder says {expected}";
    }

    private static IEnumerable<string> Misnamed(SourceText file) =>
        file.Stem == "Program" || Regex.IsMatch(file.Text, $@"\b(class|record|struct|interface|enum) {file.Stem}\b")
            ? []
            : [$"{file.Path}: holds no type called {file.Stem}"];

    private static IEnumerable<string> Undone(SourceText file) =>
        from line in file.Lines
        where line.Line.Contains("NotImplementedException", StringComparison.Ordinal) || ToDo().IsMatch(line.Line)
        select $"{file.Path}:{line.Number}: {line.Line.Trim()}";

    private static IEnumerable<string> Silenced(SourceText file) =>
        from line in file.Lines
        where line.Line.StartsWith("#pragma warning " + "disable", StringComparison.Ordinal) && !line.Line.Contains("//", StringComparison.Ordinal)
        select $"{file.Path}:{line.Number}: a warning switched off without a reason on the line";

    [GeneratedRegex(@"^namespace ([\w.]+);")]
    private static partial Regex Namespace();

    [GeneratedRegex(@"(Helper|Manager|Util)(s|ies|ity)?\b")]
    private static partial Regex VagueName();

    [GeneratedRegex(@"\b(TODO|FIXME|HACK|XXX)\b")]
    private static partial Regex ToDo();
}
