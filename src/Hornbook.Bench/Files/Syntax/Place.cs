namespace Hornbook.Bench.Files.Syntax;

/// <summary>A stretch of the text.</summary>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1.</param>
/// <param name="Offset">From the start of the text.</param>
/// <param name="Length">In UTF-16 units.</param>
internal readonly record struct Place(int Line, int Column, int Offset, int Length)
{
    /// <summary>The very start of the file.</summary>
    internal static Place Start { get; } = new(1, 1, 0, 0);
}
