namespace Hornbook.Physics.Panels.Choosing;

/// <summary>A dimension of a grid.</summary>
public enum GridDimension
{
    /// <summary>Width of the strips or diameter of the wires, at the same period.</summary>
    Metal,

    /// <summary>From one strip or wire to the next, with the same metal.</summary>
    Period,
}

/// <summary>What an error in one dimension of all strips or wires does.</summary>
/// <param name="Dimension">Where the error is.</param>
/// <param name="Error">How large, ± [m].</param>
/// <param name="Smaller">The grid with that dimension too small by the error.</param>
/// <param name="Larger">The grid with that dimension too large by the error.</param>
public sealed record GridError(GridDimension Dimension, double Error, GridFigures Smaller, GridFigures Larger)
{
    /// <summary>Each dimension in error, one at a time.</summary>
    /// <param name="drawn">As drawn.</param>
    /// <param name="error">± [m]; finite, ≥ 0. A metal that would leave the range of the make stays at its end.</param>
    /// <exception cref="ArgumentOutOfRangeException">The error is out of its range, or no period is left.</exception>
    public static IReadOnlyList<GridError> Each(GridFigures drawn, double error)
    {
        ArgumentNullException.ThrowIfNull(drawn);
        Require.NotNegative(error);
        return
        [
            new(GridDimension.Metal, error, With(drawn, drawn.Period, drawn.Metal - error), With(drawn, drawn.Period, drawn.Metal + error)),
            new(GridDimension.Period, error, With(drawn, drawn.Period - error, drawn.Metal), With(drawn, drawn.Period + error, drawn.Metal)),
        ];
    }

    private static GridFigures With(GridFigures drawn, double period, double metal)
    {
        GridMake make = drawn.Make;
        double held = Math.Clamp(metal, make.LeastShare * Require.Positive(period), make.LargestShare * period);
        return GridFigures.Of(make, period, held, drawn.Frequency);
    }
}
