using System.Text;
using Hornbook.Bench.Files;
using Hornbook.Tabletop.Keeping;

namespace Hornbook.Tabletop.Benches;

/// <summary>The one folder in which benches are looked for and written. Nothing that is asked of it leads out of it.</summary>
/// <param name="path">Where it is; it may not exist yet.</param>
/// <remarks>A name is never joined to a path before it was found among the names that the folder has, or passed <see cref="BenchName"/>. Links are not followed.</remarks>
public sealed class BenchFolder(string path)
{
    /// <summary>So many files are listed; more are for another folder.</summary>
    public const int MostListed = 200;

    /// <summary>Where it is.</summary>
    public string Path { get; } = System.IO.Path.GetFullPath(path);

    /// <summary>The folder in which a bench is kept.</summary>
    public static BenchFolder Of(BenchHome home)
    {
        ArgumentNullException.ThrowIfNull(home);
        return new BenchFolder(System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(home.KeptIn))!);
    }

    /// <summary>The bench files, the one written last first.</summary>
    public IReadOnlyList<BenchEntry> List(CancellationToken cancellation = default) =>
    [
        .. Files().OrderByDescending(file => file.LastWriteTimeUtc).Take(MostListed).Select(file =>
        {
            cancellation.ThrowIfCancellationRequested();
            return BenchEntry.Of(file.Name, file.LastWriteTimeUtc, BenchFile.Read(file.FullName));
        }),
    ];

    /// <summary>Reads one of its files.</summary>
    /// <param name="fileName">As it is listed.</param>
    /// <returns>The file, usable or not; null where the folder has none of that name.</returns>
    public BenchFile? Read(string fileName) => Find(fileName) is { } file ? BenchFile.Read(file.FullName) : null;

    /// <summary>Where one of its files is; null where it has none of that name.</summary>
    public string? Where(string fileName) => Find(fileName)?.FullName;

    /// <summary>Writes a new file; an old one is never written over.</summary>
    /// <returns>Why not; null where it was written.</returns>
    public string? Add(BenchName name, string text)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(text);
        string target = System.IO.Path.Combine(Path, name.FileName);
        try
        {
            Directory.CreateDirectory(Path);
            if (Names().Contains(name.FileName, StringComparer.OrdinalIgnoreCase))
            {
                return $"{name.FileName} is there already.";
            }

            // Made new or not at all: what appeared under that name meanwhile, a link included, is not written to.
            using FileStream stream = new(target, FileMode.CreateNew, FileAccess.Write);
            stream.Write(Encoding.UTF8.GetBytes(text));
            return null;
        }
        catch (Exception cannot) when (cannot is IOException or UnauthorizedAccessException)
        {
            return $"{name.FileName} cannot be written: {cannot.Message}";
        }
    }

    private FileInfo? Find(string fileName) => Files().FirstOrDefault(file => file.Name == fileName);

    private IEnumerable<FileInfo> Files() => new DirectoryInfo(Path) is { Exists: true } folder
        ? folder.EnumerateFiles("*.toml").Where(file => file.LinkTarget is null && !file.Attributes.HasFlag(FileAttributes.Directory))
        : [];

    // Whatever has a name takes it, links and folders too.
    private IEnumerable<string> Names() => Directory.EnumerateFileSystemEntries(Path).Select(entry => System.IO.Path.GetFileName(entry));
}
