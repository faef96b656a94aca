namespace Hornbook.Testing;

/// <summary>Compares a text with an approved file beside the test; writes *.received.* where they differ.</summary>
/// <remarks>HORNBOOK_APPROVE=1 in the environment accepts what was received: look at the difference before committing it.</remarks>
public static class Approve
{
    /// <summary>Compares.</summary>
    /// <param name="received">The text made by the code.</param>
    /// <param name="approvedPath">The approved file; its name holds ".approved.".</param>
    public static void Text(string received, string approvedPath)
    {
        received = received.ReplaceLineEndings("\n");
        string approved = File.Exists(approvedPath) ? File.ReadAllText(approvedPath).ReplaceLineEndings("\n") : string.Empty;
        string receivedPath = approvedPath.Replace(".approved.", ".received.", StringComparison.Ordinal);
        if (received == approved)
        {
            File.Delete(receivedPath);
            return;
        }

        if (Environment.GetEnvironmentVariable("HORNBOOK_APPROVE") == "1")
        {
            File.WriteAllText(approvedPath, received);
            return;
        }

        File.WriteAllText(receivedPath, received);
        throw new NotApprovedException($"{receivedPath} differs from the approved text; compare them, and run again with HORNBOOK_APPROVE=1 to accept it");
    }
}

/// <summary>A text differs from its approved file.</summary>
public sealed class NotApprovedException(string message) : Exception(message);
