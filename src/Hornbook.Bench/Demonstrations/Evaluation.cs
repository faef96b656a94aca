namespace Hornbook.Bench.Demonstrations;

/// <summary>What a demonstration's curve is worth beside what is true of the antennas and what books say.</summary>
public abstract record Evaluation;
