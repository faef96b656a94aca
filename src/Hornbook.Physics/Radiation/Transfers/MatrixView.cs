namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>A matrix as it lies in memory, or its transpose.</summary>
/// <param name="numbers">All its numbers.</param>
/// <param name="rows">How many rows.</param>
/// <param name="columns">How many columns.</param>
/// <param name="rowStep">From one row to the next.</param>
/// <param name="columnStep">From one column to the next.</param>
internal readonly ref struct MatrixView(ReadOnlySpan<double> numbers, int rows, int columns, int rowStep, int columnStep)
{
    /// <summary>All its numbers.</summary>
    internal ReadOnlySpan<double> Numbers { get; } = numbers;

    /// <summary>How many rows.</summary>
    internal int Rows { get; } = rows;

    /// <summary>How many columns.</summary>
    internal int Columns { get; } = columns;

    /// <summary>From one row to the next.</summary>
    internal int RowStep { get; } = rowStep;

    /// <summary>From one column to the next.</summary>
    internal int ColumnStep { get; } = columnStep;
}
