namespace Hornbook.Tabletop.Keeping;

/// <summary>Where a bench is read from and where what is done to it is kept.</summary>
/// <param name="OpenedFrom">The file that is opened.</param>
/// <param name="KeptIn">The file that is written; another one where what is opened is shipped with the program.</param>
public sealed record BenchHome(string OpenedFrom, string KeptIn)
{
    /// <summary>Folder for copies of the examples, in the folder in which the program was started.</summary>
    public const string CopiesFolder = "benches";

    private static readonly string Shipped = Path.Combine(AppContext.BaseDirectory, "examples");

    /// <summary>Whether what is opened is an example, which is never written into.</summary>
    public bool IsExample => OpenedFrom != KeptIn;

    /// <summary>Where a bench named on the command line is kept; without a name, the example, or the copy of it that was made in this folder before.</summary>
    /// <param name="named">As typed; null where none was.</param>
    /// <param name="folder">In which the program was started.</param>
    public static BenchHome For(string? named, string folder)
    {
        string example = Path.Combine(Shipped, "evening-bench.toml");
        if (named is null)
        {
            string copy = Path.Combine(folder, CopiesFolder, Path.GetFileName(example));
            return File.Exists(copy) ? new BenchHome(copy, copy) : new BenchHome(example, copy);
        }

        string path = Path.GetFullPath(named, folder);
        return IsShipped(path) ? new BenchHome(path, Path.Combine(folder, CopiesFolder, Path.GetFileName(path))) : new BenchHome(path, path);
    }

    /// <summary>The same, with a copy that does not stand in the way of an older one: "evening-bench-2.toml".</summary>
    public BenchHome WithFreeName()
    {
        string name = Path.Combine(Path.GetDirectoryName(KeptIn)!, Path.GetFileNameWithoutExtension(KeptIn));
        IEnumerable<string> names = Enumerable.Range(2, int.MaxValue - 2).Select(number => $"{name}-{number}{Path.GetExtension(KeptIn)}");
        return IsExample ? this with { KeptIn = names.Prepend(KeptIn).First(free => !File.Exists(free)) } : this;
    }

    /// <summary>A file of the examples folder that is word for word the one shipped under its name.</summary>
    private static bool IsShipped(string path)
    {
        string shipped = Path.Combine(Shipped, Path.GetFileName(path));
        bool inExamples = Path.GetFileName(Path.GetDirectoryName(path)) == "examples";
        return path == shipped || (inExamples && File.Exists(shipped) && File.Exists(path) && File.ReadAllBytes(path).AsSpan().SequenceEqual(File.ReadAllBytes(shipped)));
    }
}
