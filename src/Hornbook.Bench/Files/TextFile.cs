using System.Text;
using Hornbook.Bench.Files.Quantities;
using Hornbook.Bench.Files.Syntax;

namespace Hornbook.Bench.Files;

/// <summary>A file read as UTF-8 text.</summary>
/// <param name="Text">The text; empty where there is none.</param>
/// <param name="Wrong">Why there is none; null where there is.</param>
internal sealed record TextFile(string Text, PlacedProblem? Wrong)
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Reads a file of at most so many bytes.</summary>
    internal static TextFile Read(string path, int longest)
    {
        try
        {
            using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            byte[] bytes = new byte[longest + 1];
            int count = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return count > longest
                ? Not("the file is too long", $"a bench file has {longest / 1024} kB at most", "give the name of a bench file")
                : Decode(bytes.AsSpan(0, count));
        }
        catch (Exception cannot) when (cannot is FileNotFoundException or DirectoryNotFoundException)
        {
            return Not("there is no such file", "the name of a bench file fits", "give another name");
        }
        catch (Exception cannot) when (cannot is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Not($"the file cannot be read ({cannot.Message.TrimEnd('.')})", "a bench file that you may read fits", "give another name");
        }
    }

    /// <summary>Bytes as text; where they are not UTF-8, the place of the first that is not.</summary>
    internal static TextFile Decode(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return new TextFile(Strict.GetString(bytes), null);
        }
        catch (DecoderFallbackException)
        {
            string lossy = Encoding.UTF8.GetString(bytes);
            Place place = new LineIndex(lossy).At(lossy.IndexOf('\uFFFD', StringComparison.Ordinal), 1);
            return new TextFile(lossy, new PlacedProblem(place, new Misreading(
                "a letter is not UTF-8", "a bench file is UTF-8 text", "save the file as UTF-8 and type the letter again")));
        }
    }

    private static TextFile Not(string read, string fits, string type) =>
        new(string.Empty, new PlacedProblem(Place.Start, new Misreading(read, fits, type)));
}
