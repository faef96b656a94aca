namespace Hornbook.Testing;

/// <summary>The browser that the tests drive: HORNBOOK_CHROMIUM in the environment, or where Debian puts it.</summary>
public static class Chromium
{
    /// <summary>Why browser tests are skipped where there is none.</summary>
    public const string Missing = "no Chromium: sudo apt-get install -y chromium, or set HORNBOOK_CHROMIUM";

    /// <summary>Path of the executable; it may not be there.</summary>
    public static string Path { get; } =
        Environment.GetEnvironmentVariable("HORNBOOK_CHROMIUM") is { Length: > 0 } set ? set : "/usr/bin/chromium";

    /// <summary>Whether a missing browser lets its tests be skipped: everywhere but in continuous integration.</summary>
    public static bool MaySkip => !File.Exists(Path) && Environment.GetEnvironmentVariable("CI") != "true";
}
