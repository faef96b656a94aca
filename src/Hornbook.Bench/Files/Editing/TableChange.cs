namespace Hornbook.Bench.Files.Editing;

/// <summary>What becomes of a whole table.</summary>
internal abstract record TableChange;

/// <summary>It is made.</summary>
/// <param name="Lines">The lines below its header.</param>
internal sealed record NewTable(IReadOnlyList<string> Lines) : TableChange;

/// <summary>It is made once more.</summary>
/// <param name="Name">Under this name.</param>
internal sealed record CopiedTable(string Name) : TableChange;

/// <summary>It is taken out.</summary>
internal sealed record NoTable : TableChange;
