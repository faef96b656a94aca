using Hornbook.Bench.Files;
using Hornbook.Tabletop.Desk;
using Hornbook.Tabletop.Keeping;

namespace Hornbook.Tabletop.Benches;

/// <summary>Opens, copies and begins benches of one folder.</summary>
/// <remarks>What it returns is why something was not done, one sentence; null where it was.</remarks>
public sealed class BenchOpener(BenchDesk desk, BenchKeeper keeper, BenchFolder folder)
{
    public BenchFolder Folder { get; } = folder;

    /// <summary>Whether a file of the folder is the one on the desk.</summary>
    public bool IsOpen(string fileName) => Folder.Where(fileName) == Path.GetFullPath(keeper.Home.OpenedFrom);

    /// <summary>Lays a bench of the folder on the desk.</summary>
    public string? Open(string fileName) => Open(Folder, fileName, path => new BenchHome(path, path));

    /// <summary>Lays an example on the desk; what is changed is kept in a copy in the folder.</summary>
    public string? OpenExample(string fileName) =>
        Open(ShippedBenches.Folder, fileName, path => new BenchHome(path, Path.Combine(Folder.Path, Path.GetFileName(path))));

    /// <summary>Copies a bench of the folder; of the one on the desk, as it lies there.</summary>
    public string? Copy(string fileName, string? newName)
    {
        if (!BenchName.TryRead(newName, out BenchName? name, out string? wrong))
        {
            return wrong;
        }

        BenchFile? file = IsOpen(fileName) ? desk.Now.File : Folder.Read(fileName);
        return file is null ? $"There is no {fileName} any more." : Folder.Add(name, file.Text);
    }

    /// <summary>Writes a new bench and lays it on the desk.</summary>
    public string? Begin(BenchName name, BenchFile file)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(file);
        return Folder.Add(name, file.Text) ?? Open(name.FileName);
    }

    private string? Open(BenchFolder from, string fileName, Func<string, BenchHome> home)
    {
        if (from.Where(fileName) is not { } path)
        {
            return $"There is no {fileName} any more.";
        }

        BenchFile file = BenchFile.Read(path);
        return keeper.Open(file, home(path)) is { } refusal ? $"{fileName} cannot be opened: {refusal}." : null;
    }
}
