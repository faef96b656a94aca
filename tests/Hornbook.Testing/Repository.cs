namespace Hornbook.Testing;

/// <summary>Where things are in the checkout.</summary>
public static class Repository
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    /// <summary>A path below the root.</summary>
    public static string At(params string[] parts) => Path.Combine([Root, .. parts]);

    private static string Find(string folder) =>
        File.Exists(Path.Combine(folder, "Hornbook.slnx"))
            ? folder
            : Find(Path.GetDirectoryName(folder) ?? throw new DirectoryNotFoundException("Hornbook.slnx is in no folder above the tests"));
}
