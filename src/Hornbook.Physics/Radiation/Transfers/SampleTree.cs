using System.Runtime.InteropServices;

namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>The samples of a body, sorted by halving the box around them again and again. Immutable.</summary>
/// <remarks>
/// The boxes lie along axes of the body's own, so that those of a flat panel are flat. In a box that is not halved further, samples that differ in
/// the first of these axes only stand next to each other: a row. Interpolation goes row by row, which a lattice of samples makes cheap.
/// </remarks>
internal sealed class SampleTree
{
    /// <summary>Boxes with no more samples are not halved.</summary>
    internal const int LeafCount = 256;

    /// <summary>The most samples in a row.</summary>
    internal const int RowCount = 32;

    // Lanes are read past the end of the last row.
    private const int Room = 8;

    private readonly Vector[] _points;
    private readonly int[] _order;
    private readonly double[][] _place = [[], [], []];
    private readonly double[][] _own = [[], [], []];
    private readonly List<int> _rows;

    private SampleTree(ReadOnlySpan<Vector> points, Frame axes)
    {
        (Axes, _rows) = (axes, []);
        Vector[] own = new Vector[points.Length];
        _order = new int[points.Length];
        for (int i = 0; i < own.Length; i++)
        {
            own[i] = axes.Own(points[i]);
            _order[i] = i;
        }

        SameWithin = 1e-9 * Extent(own).Half.Length;
        (Root, Whole) = (Halve(own, 0, own.Length), own.Length);
        _rows.Add(own.Length);
        _points = new Vector[own.Length];
        for (int i = 0; i < own.Length; i++)
        {
            _points[i] = points[_order[i]];
        }

        _place = Components(_points);
        _own = Components(own);
    }

    private SampleTree(SampleTree held, Frame pose)
    {
        (_order, _rows, _own, SameWithin) = (held._order, held._rows, held._own, held.SameWithin);
        Axes = new Frame(pose.Place(held.Axes.Origin), pose.Turn(held.Axes.Forward), pose.Turn(held.Axes.Left), pose.Turn(held.Axes.Up));
        _points = Array.ConvertAll(held._points, pose.Place);
        _place = Components(_points);
        (Root, Whole) = (Posed(held.Root, pose), held.Whole);
    }

    private SampleTree(SampleTree part, int[] numbers, int whole)
    {
        (_points, _place, _own, _rows, Axes, Root, SameWithin) = (part._points, part._place, part._own, part._rows, part.Axes, part.Root, part.SameWithin);
        (_order, Whole) = (Array.ConvertAll(part._order, i => numbers[i]), whole);
    }

    /// <summary>The axes of the boxes, from the longest side of the body to the shortest; bench frame.</summary>
    internal Frame Axes { get; }

    /// <summary>The box around all.</summary>
    internal SampleBox Root { get; }

    /// <summary>How many places are in what it was made from; more than are in the tree where that is a part of them.</summary>
    internal int Whole { get; }

    /// <summary>Samples in the order of the tree [m].</summary>
    internal ReadOnlySpan<Vector> Points => _points;

    /// <summary>Where each sample of the tree stood in what it was made from.</summary>
    internal ReadOnlySpan<int> Order => _order;

    /// <summary>Where rows begin, and last where they end.</summary>
    internal ReadOnlySpan<int> Rows => CollectionsMarshal.AsSpan(_rows);

    private double SameWithin { get; }

    /// <summary>A tree.</summary>
    /// <param name="points">Places in the bench frame [m]; finite, at least one.</param>
    /// <param name="axes">Axes along which the body is flat or its samples are in line; any will do, right ones are fast.</param>
    /// <exception cref="ArgumentException">There are no points.</exception>
    internal static SampleTree Of(ReadOnlySpan<Vector> points, Frame axes)
    {
        if (points.IsEmpty)
        {
            throw new ArgumentException("0 samples; at least one is needed");
        }

        Vector half = Extent(points, axes).Half;
        (double Length, Vector Axis)[] sides = [(half.X, axes.Forward), (half.Y, axes.Left), (half.Z, axes.Up)];
        Vector[] sorted = [.. sides.OrderByDescending(s => s.Length).Select(s => s.Axis)];
        return new SampleTree(points, new Frame(axes.Origin, sorted[0], sorted[1], sorted[2]));
    }

    /// <summary>The same body, which was sorted in its own frame, held in a pose.</summary>
    /// <param name="pose">Its own frame as the bench sees it.</param>
    internal SampleTree Posed(Frame pose) => new(this, pose);

    /// <summary>The same, made from a part of a longer list: it takes its currents from there.</summary>
    /// <param name="numbers">Where each place stands in that list.</param>
    /// <param name="whole">How many places that has.</param>
    internal SampleTree Numbered(int[] numbers, int whole) => new(this, numbers, whole);

    /// <summary>One coordinate of all samples in the bench frame [m], in the order of the tree, with room for a register behind.</summary>
    internal ReadOnlySpan<double> Place(int axis) => _place[axis];

    /// <summary>One coordinate of all samples along an axis of the body [m], in the order of the tree.</summary>
    internal ReadOnlySpan<double> Own(int axis) => _own[axis];

    private static SampleBox Posed(SampleBox box, Frame pose) => box with
    {
        Place = pose.Place(box.Place),
        Halves = box.Halves is (SampleBox low, SampleBox high) ? (Posed(low, pose), Posed(high, pose)) : null,
    };

    private static double[][] Components(Vector[] points)
    {
        double[][] components = [new double[points.Length + Room], new double[points.Length + Room], new double[points.Length + Room]];
        for (int i = 0; i < points.Length; i++)
        {
            components[0][i] = points[i].X;
            components[1][i] = points[i].Y;
            components[2][i] = points[i].Z;
        }

        return components;
    }

    private static (Vector Centre, Vector Half) Extent(ReadOnlySpan<Vector> points, Frame axes)
    {
        Vector[] own = new Vector[points.Length];
        for (int i = 0; i < own.Length; i++)
        {
            own[i] = axes.Own(points[i]);
        }

        return Extent(own);
    }

    private static (Vector Centre, Vector Half) Extent(ReadOnlySpan<Vector> own)
    {
        Vector low = own[0], high = own[0];
        foreach (Vector p in own)
        {
            low = new Vector(Math.Min(low.X, p.X), Math.Min(low.Y, p.Y), Math.Min(low.Z, p.Z));
            high = new Vector(Math.Max(high.X, p.X), Math.Max(high.Y, p.Y), Math.Max(high.Z, p.Z));
        }

        return ((low + high) * 0.5, (high - low) * 0.5);
    }

    private SampleBox Halve(Vector[] own, int first, int count)
    {
        (Vector centre, Vector half) = Extent(own.AsSpan(first, count));
        half = new Vector(Flattened(half.X), Flattened(half.Y), Flattened(half.Z));
        int firstRow = _rows.Count;
        (SampleBox Low, SampleBox High)? halves = null;
        if (count <= LeafCount || half == Vector.Zero)
        {
            SortRows(own.AsSpan(first, count), first);
        }
        else
        {
            int low = Partition(own.AsSpan(first, count), _order.AsSpan(first, count), centre, half);
            halves = (Halve(own, first, low), Halve(own, first + low, count - low));
        }

        return new SampleBox(first, count, firstRow, _rows.Count - firstRow, centre, half, Axes.Place(centre), halves);
    }

    private double Flattened(double side) => side <= SameWithin ? 0.0 : side;

    /// <summary>Those on the lower side of the middle of the longest side come first; how many they are.</summary>
    private static int Partition(Span<Vector> own, Span<int> order, Vector centre, Vector half)
    {
        Vector along = half.X >= half.Y && half.X >= half.Z ? new(1, 0, 0) : half.Y >= half.Z ? new(0, 1, 0) : new(0, 0, 1);
        double middle = Vector.Dot(centre, along);
        int low = 0;
        for (int i = 0; i < own.Length; i++)
        {
            if (Vector.Dot(own[i], along) < middle)
            {
                (own[i], own[low]) = (own[low], own[i]);
                (order[i], order[low]) = (order[low], order[i]);
                low++;
            }
        }

        return low;
    }

    private void SortRows(Span<Vector> own, int first)
    {
        own.Sort(_order.AsSpan(first, own.Length), Compare);
        int start = 0;
        for (int i = 0; i < own.Length; i++)
        {
            if (i == 0 || i - start == RowCount || !InLine(own[i], own[i - 1]))
            {
                start = i;
                _rows.Add(first + i);
            }
        }
    }

    private bool InLine(Vector a, Vector b) => Step(a.Y) == Step(b.Y) && Step(a.Z) == Step(b.Z);

    private int Compare(Vector a, Vector b)
    {
        int z = Step(a.Z).CompareTo(Step(b.Z));
        int y = z != 0 ? z : Step(a.Y).CompareTo(Step(b.Y));
        return y != 0 ? y : a.X.CompareTo(b.X);
    }

    // In steps and not by difference, so that the order is one: a is before c where a is before b and b before c.
    private double Step(double coordinate) => SameWithin > 0.0 ? Math.Round(coordinate / SameWithin) : 0.0;
}
