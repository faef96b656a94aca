namespace Hornbook.Physics.Panels.Edges;

/// <summary>The links of a sheet's cells to its rims in columns, as the kernel walks them: foot by foot, the cells near the rim first. Immutable.</summary>
internal sealed class EdgeColumns
{
    // Farther than so many breadths of a cell from the rim the currents are a plane wave with an amplitude that hardly changes in a cell.
    private const double NearBreadths = 4.0;

    // Lanes are read past the end.
    private const int Room = 8;

    private readonly int[] _cells;
    private readonly double[] _distances;
    private readonly double[] _breadths;
    private readonly double[] _ahead;
    private readonly double[] _spreading;
    private readonly (int First, int FirstFar)[] _starts;

    /// <param name="links">In any order.</param>
    /// <param name="feet">How many feet.</param>
    internal EdgeColumns(IEnumerable<EdgeLink> links, int feet)
    {
        EdgeLink[] sorted = [.. links.OrderBy(link => link.Foot).ThenBy(IsFar).ThenBy(link => link.Distance)];
        _cells = Array.ConvertAll(sorted, link => link.Cell);
        _distances = Column(sorted, link => link.Distance);
        _breadths = Column(sorted, link => link.Breadth);
        _ahead = Column(sorted, link => link.Ahead);
        _spreading = Column(sorted, link => link.Spreading);
        _starts = new (int, int)[feet + 1];
        int next = 0;
        for (int foot = 0; foot <= feet; foot++)
        {
            int first = next;
            while (next < sorted.Length && sorted[next].Foot == foot && !IsFar(sorted[next]))
            {
                next++;
            }

            _starts[foot] = (first, next);
            while (next < sorted.Length && sorted[next].Foot == foot)
            {
                next++;
            }
        }
    }

    /// <summary>The cells near a foot's stretch of rim, over which its current changes much.</summary>
    internal Rows Near(int foot) => Between(_starts[foot].First, _starts[foot].FirstFar);

    /// <summary>The cells far from it.</summary>
    internal Rows Far(int foot) => Between(_starts[foot].FirstFar, _starts[foot + 1].First);

    private static bool IsFar(EdgeLink link) => link.Distance > NearBreadths * link.Breadth;

    private static double[] Column(EdgeLink[] links, Converter<EdgeLink, double> part) => [.. Array.ConvertAll(links, part), .. new double[Room]];

    private Rows Between(int first, int end) => new(_cells.AsSpan(first, end - first), _distances.AsSpan(first), _breadths.AsSpan(first), _ahead.AsSpan(first), _spreading.AsSpan(first));

    /// <summary>Some of the links; there is room for a register behind the last number of a column. The numbers are those of <see cref="EdgeLink"/>.</summary>
    internal readonly ref struct Rows(
        ReadOnlySpan<int> cells, ReadOnlySpan<double> distances, ReadOnlySpan<double> breadths, ReadOnlySpan<double> ahead, ReadOnlySpan<double> spreading)
    {
        internal ReadOnlySpan<int> Cells { get; } = cells;

        internal ReadOnlySpan<double> Distances { get; } = distances;

        internal ReadOnlySpan<double> Breadths { get; } = breadths;

        internal ReadOnlySpan<double> Ahead { get; } = ahead;

        internal ReadOnlySpan<double> Spreading { get; } = spreading;
    }
}
