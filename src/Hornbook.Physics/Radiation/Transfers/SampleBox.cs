namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>A box that holds a run of the samples of a body, in the order of its tree.</summary>
/// <param name="First">The first sample.</param>
/// <param name="Count">How many; ≥ 1.</param>
/// <param name="FirstRow">The first row of samples.</param>
/// <param name="RowCount">How many rows; ≥ 1.</param>
/// <param name="OwnCentre">Centre in the axes of the body [m].</param>
/// <param name="Half">Half of its sides along the axes of the body [m]; ≥ 0.</param>
/// <param name="Place">Centre in the bench frame [m].</param>
/// <param name="Halves">Its two halves, or none.</param>
internal sealed record SampleBox(
    int First, int Count, int FirstRow, int RowCount, Vector OwnCentre, Vector Half, Vector Place, (SampleBox Low, SampleBox High)? Halves)
{
    /// <summary>Half of its diagonal [m].</summary>
    internal double Radius { get; } = Half.Length;

    /// <summary>One past the last sample.</summary>
    internal int End => First + Count;

    /// <summary>One past the last row.</summary>
    internal int EndRow => FirstRow + RowCount;

    /// <summary>Whether all samples of another box of the same tree are in this one.</summary>
    internal bool Holds(SampleBox other) => First <= other.First && other.End <= End;
}
