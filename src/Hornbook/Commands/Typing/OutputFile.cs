using System.CommandLine;
using Hornbook.Bench.Files;
using Hornbook.Drawing.Figures;

namespace Hornbook.Commands.Typing;

/// <summary>Files that a command writes on request.</summary>
internal static class OutputFile
{
    private static readonly string[] FigureKinds = [".svg", ".png"];

    /// <summary>The option --figure.</summary>
    internal static Option<string?> Figure(string description)
    {
        Option<string?> option = new("--figure") { Description = $"{description} (*.svg or *.png).", HelpName = "FILE" };
        option.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && !FigureKinds.Contains(Kind(result.Tokens[0].Value)))
            {
                result.AddError($"--figure: \"{result.Tokens[0].Value}\" ends neither in .svg nor in .png");
            }
        });
        return option;
    }

    /// <summary>Writes a figure in the format that the file's name asks for, and says so on the error stream.</summary>
    internal static void Write(string path, Figure figure, TextWriter error)
    {
        if (Kind(path) == ".png")
        {
            byte[] picture = figure.ToPng();
            AtomicFile.Write(path, stream => stream.Write(picture));
        }
        else
        {
            AtomicFile.Write(path, figure.ToSvg());
        }

        error.WriteLine($"wrote {path}");
    }

    /// <summary>Writes a text, and says so on the error stream.</summary>
    internal static void Write(string path, string text, TextWriter error)
    {
        AtomicFile.Write(path, text);
        error.WriteLine($"wrote {path}");
    }

    /// <summary>The path for one of several things: the name goes before the ending where there is more than one.</summary>
    internal static string For(string path, string name, int count) =>
        count == 1 ? path : Path.ChangeExtension(path, null) + "-" + name + Path.GetExtension(path);

    private static string Kind(string path) => Path.GetExtension(path).ToLowerInvariant();
}
