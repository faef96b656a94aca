using System.Globalization;

namespace Hornbook.Bench.Files;

/// <summary>Something in a bench file that cannot be used as it stands.</summary>
/// <param name="File">Name of the file.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1, in UTF-16 units as editors count.</param>
/// <param name="Length">How many UTF-16 units are meant; 0 where something is missing.</param>
/// <param name="Read">What was read.</param>
/// <param name="Fits">What would fit.</param>
/// <param name="Type">What to type.</param>
public sealed record FileProblem(string File, int Line, int Column, int Length, string Read, string Fits, string Type)
{
    /// <summary>The whole on one line: file:line:column: read; fits; type.</summary>
    public string Message => string.Create(CultureInfo.InvariantCulture, $"{File}:{Line}:{Column}: {Read}; {Fits}; {Type}");

    /// <inheritdoc/>
    public override string ToString() => Message;
}
