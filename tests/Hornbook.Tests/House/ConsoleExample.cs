using System.Globalization;
using System.Text.RegularExpressions;

namespace Hornbook.Tests.House;

/// <summary>A line to type, from a console block of a page, and what the page says comes of it.</summary>
/// <param name="Page">The page.</param>
/// <param name="LineNumber">Where in the page.</param>
/// <param name="Command">What is typed.</param>
/// <param name="ExitCode">Its exit code: 0, or as a trailing "# exit code 2" says.</param>
/// <param name="Shown">The lines of output that the page shows; "…" stands for lines left out.</param>
internal sealed partial record ConsoleExample(string Page, int LineNumber, string Command, int ExitCode, IReadOnlyList<string> Shown)
{
    /// <summary>Whether it is run: a call of hornbook that ends by itself, or what prepares a file for one.</summary>
    public bool IsRun => Runnable().IsMatch(Command) && !Serving().IsMatch(Command);

    /// <summary>All of a page, in its order.</summary>
    public static IEnumerable<ConsoleExample> Of(SourceText page)
    {
        List<ConsoleExample> found = [];
        List<string> shown = [];
        bool inside = false;
        foreach ((int number, string line) in page.Lines)
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
            {
                inside = line == "```console";
            }
            else if (inside && line.StartsWith("$ ", StringComparison.Ordinal))
            {
                Match typed = Typed().Match(line);
                shown = [];
                int code = typed.Groups[2].Success ? int.Parse(typed.Groups[2].Value, CultureInfo.InvariantCulture) : 0;
                found.Add(new ConsoleExample(page.Path, number, typed.Groups[1].Value, code, shown));
            }
            else if (inside)
            {
                shown.Add(line.TrimEnd());
            }
        }

        return found;
    }

    /// <summary>The first shown line that is not in an output, in order; null where all are.</summary>
    public string? FirstMissing(string output)
    {
        Queue<string> lines = new(output.Split('\n').Select(l => l.TrimEnd()));
        foreach (string line in Shown.Where(l => l.Length > 0 && l.Trim() != "…"))
        {
            while (lines.TryPeek(out string? next) && next != line)
            {
                lines.Dequeue();
            }

            if (!lines.TryDequeue(out _))
            {
                return line;
            }
        }

        return null;
    }

    [GeneratedRegex(@"^\$ (.*?)(?:\s+# exit code (\d+))?$")]
    private static partial Regex Typed();

    [GeneratedRegex(@"^((\./)?hornbook|sed|cp|cat)( |$)")]
    private static partial Regex Runnable();

    [GeneratedRegex(@"^\S*hornbook( tabletop\b.*)?$")]
    private static partial Regex Serving();
}
