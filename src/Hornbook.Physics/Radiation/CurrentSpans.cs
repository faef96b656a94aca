namespace Hornbook.Physics.Radiation;

/// <summary>Currents as the kernel walks them, wherever they are kept.</summary>
/// <param name="points">Places [m], length n.</param>
/// <param name="electric">J dS [A m], length n; or n of each of several sets, set after set.</param>
/// <param name="dual">jM dS/η [A m], as many.</param>
/// <param name="kind">What can be other than zero.</param>
internal readonly ref struct CurrentSpans(
    ReadOnlySpan<Vector> points, ReadOnlySpan<ComplexVector> electric, ReadOnlySpan<ComplexVector> dual, CurrentKind kind)
{
    /// <summary>Places [m], length n.</summary>
    internal ReadOnlySpan<Vector> Points { get; } = points;

    /// <summary>J dS [A m], length n for each set.</summary>
    internal ReadOnlySpan<ComplexVector> Electric { get; } = electric;

    /// <summary>jM dS/η [A m], length n for each set.</summary>
    internal ReadOnlySpan<ComplexVector> Dual { get; } = dual;

    /// <summary>What can be other than zero.</summary>
    internal CurrentKind Kind { get; } = kind;

    /// <summary>How many currents there are at each place; one set where there are no places.</summary>
    internal int Sets => Points.IsEmpty ? 1 : Electric.Length / Points.Length;

    /// <summary>Some of one set, one after another.</summary>
    internal CurrentSpans Slice(int first, int length, int set = 0)
    {
        int at = (set * Points.Length) + first;
        return new(Points.Slice(first, length), Electric.Slice(at, length), Dual.Slice(at, length), Kind);
    }
}
