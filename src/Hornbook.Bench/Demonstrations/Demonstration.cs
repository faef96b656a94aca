namespace Hornbook.Bench.Demonstrations;

/// <summary>Something that is shown: one thing is moved or changed while the rest stands.</summary>
/// <param name="Name">Short and unique within a bench; used on the command line.</param>
public abstract record Demonstration(string Name);
