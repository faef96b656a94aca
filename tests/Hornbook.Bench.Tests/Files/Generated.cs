namespace Hornbook.Bench.Tests.Files;

/// <summary>A file in the checkout that is written by the code and must be up to date.</summary>
internal static class Generated
{
    /// <summary>Compares; HORNBOOK_APPROVE=1 in the environment writes the file instead: look at the difference before committing it.</summary>
    internal static void Require(string path, string text)
    {
        if (Environment.GetEnvironmentVariable("HORNBOOK_APPROVE") == "1")
        {
            File.WriteAllText(path, text);
            return;
        }

        Xunit.Assert.Equal(text, File.Exists(path) ? File.ReadAllText(path).ReplaceLineEndings("\n") : string.Empty);
    }
}
