using System.Text;

namespace Hornbook.Bench.Files;

/// <summary>Writes a file whole or not at all.</summary>
public static class AtomicFile
{
    /// <summary>Writes a text as UTF-8: to a new file beside, flushed to the disk, then put in the old one's place in one step.</summary>
    /// <param name="path">The file; its folder must exist. A link is followed, and the old file's permissions are kept.</param>
    /// <param name="text">The whole text.</param>
    /// <exception cref="IOException">It cannot be written, such as on a full disk; the old file is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder or the file may not be written; the old file is as it was.</exception>
    public static void Write(string path, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        Write(path, stream => stream.Write(Encoding.UTF8.GetBytes(text)));
    }

    /// <summary>Writes what a writer puts into a stream; if it throws, the old file is as it was.</summary>
    /// <param name="path">The file.</param>
    /// <param name="write">Puts the content into the stream.</param>
    /// <exception cref="IOException">It cannot be written; the old file is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder or the file may not be written; the old file is as it was.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        ArgumentNullException.ThrowIfNull(write);
        string target = Target(path);
        RequireWritable(target);
        string beside = $"{target}.{Guid.NewGuid():N}.new";
        try
        {
            WriteThrough(beside, target, write);
            File.Move(beside, target, overwrite: true);
        }
        finally
        {
            File.Delete(beside);
        }
    }

    private static void WriteThrough(string beside, string target, Action<Stream> write)
    {
        using FileStream stream = new(beside, FileMode.CreateNew, FileAccess.Write);
        if (!OperatingSystem.IsWindows() && File.Exists(target))
        {
            File.SetUnixFileMode(stream.SafeFileHandle, File.GetUnixFileMode(target));
        }

        write(stream);
        stream.Flush(flushToDisk: true);
    }

    private static string Target(string path)
    {
        string full = Path.GetFullPath(path);
        return File.Exists(full) ? File.ResolveLinkTarget(full, returnFinalTarget: true)?.FullName ?? full : full;
    }

    /// <summary>A rename would replace a file that is marked read-only, which its owner did not want.</summary>
    private static void RequireWritable(string target)
    {
        if (File.Exists(target) && File.GetAttributes(target).HasFlag(FileAttributes.ReadOnly))
        {
            throw new UnauthorizedAccessException($"{target} is marked read-only");
        }
    }
}
