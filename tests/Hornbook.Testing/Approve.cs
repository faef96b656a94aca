namespace Hornbook.Testing;

/// <summary>Compares a text with an approved file beside the test; writes *.received.* where they differ.</summary>
/// <remarks>HORNBOOK_APPROVE=1 in the environment accepts what was received: look at the difference before committing it.</remarks>
public static class Approve
{
    /// <summary>Whether differences are to be accepted: HORNBOOK_APPROVE=1 in the environment.</summary>
    public static bool Accepting => Environment.GetEnvironmentVariable("HORNBOOK_APPROVE") == "1";

    /// <summary>Compares.</summary>
    /// <param name="received">The text made by the code.</param>
    /// <param name="approvedPath">The approved file; its name holds ".approved.".</param>
    public static void Text(string received, string approvedPath) => Text(received, approvedPath, Accepting);

    /// <summary>Compares, or accepts.</summary>
    /// <param name="received">The text made by the code.</param>
    /// <param name="approvedPath">The approved file; its name holds ".approved.".</param>
    /// <param name="accept">Whether a difference becomes the approved text.</param>
    public static void Text(string received, string approvedPath, bool accept)
    {
        string receivedPath = approvedPath.Replace(".approved.", ".received.", StringComparison.Ordinal);
        if (receivedPath == approvedPath)
        {
            throw new ArgumentException($"{approvedPath} does not hold '.approved.'", nameof(approvedPath));
        }

        received = received.ReplaceLineEndings("\n");
        bool same = File.Exists(approvedPath) && File.ReadAllText(approvedPath).ReplaceLineEndings("\n") == received;
        if (same || accept)
        {
            File.Delete(receivedPath);
            if (!same)
            {
                File.WriteAllText(approvedPath, received);
            }

            return;
        }

        File.WriteAllText(receivedPath, received);
        throw new NotApprovedException($"{receivedPath} differs from the approved text; compare them, and run again with HORNBOOK_APPROVE=1 to accept it");
    }
}

/// <summary>A text differs from its approved file.</summary>
public sealed class NotApprovedException(string message) : Exception(message);
