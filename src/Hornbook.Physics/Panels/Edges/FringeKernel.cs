using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Hornbook.Physics.Radiation;
using MathNet.Numerics.Integration;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Panels.Edges;

/// <summary>The fringe current of a foot on every cell that carries it: cells, or the points of a quadrature on one cell, in the lanes.</summary>
/// <remarks>
/// The J of a cell is the one that gives the sum over all cells what the integral over the sheet would be, for a field that is straight from cell to cell: Eq. edges (7).
/// Allocates nothing.
/// </remarks>
internal static class FringeKernel
{
    /// <summary>Adds the current to the cells of a foot, at the width of the machine.</summary>
    /// <param name="current">The current.</param>
    /// <param name="links">The links of the sheet.</param>
    /// <param name="foot">The foot where the current begins.</param>
    /// <param name="densities">J of each cell [A/m].</param>
    internal static void Add(in FringeCurrent current, EdgeColumns links, int foot, Span<ComplexVector> densities)
    {
        if (Vector512.IsHardwareAccelerated)
        {
            FringeKernel<Lanes512>.Add(current, links, foot, densities);
        }
        else if (Vector256.IsHardwareAccelerated)
        {
            FringeKernel<Lanes256>.Add(current, links, foot, densities);
        }
        else
        {
            FringeKernel<Lanes128>.Add(current, links, foot, densities);
        }
    }
}

/// <summary>The same at a given width.</summary>
internal static class FringeKernel<T>
    where T : unmanaged, ILanes<T>
{
    private const double PerTurn = 1.0 / (2.0 * Math.PI);

    // In each of the two pieces of a cell's tent.
    private const int PointsPerPiece = 4;
    private const int Points = 2 * PointsPerPiece;

    private static readonly GaussLegendreRule Rule = new(0.0, 1.0, PointsPerPiece);
    private static readonly double[] Nodes = [.. Rule.Abscissas, .. Rule.Abscissas];
    private static readonly double[] Weights = [.. Rule.Weights, .. Rule.Weights];

    /// <inheritdoc cref="FringeKernel.Add"/>
    internal static void Add(in FringeCurrent current, EdgeColumns links, int foot, Span<ComplexVector> densities)
    {
        AddFar(current, links.Far(foot), densities);
        EdgeColumns.Rows near = links.Near(foot);
        for (int i = 0; i < near.Cells.Length; i++)
        {
            Complex carried = Complex.FromPolarCoordinates(near.Spreading[i], current.PhaseSlope * near.Ahead[i]);
            (Complex smooth, Complex singular) = Near(current, near.Distances[i], near.Breadths[i]);
            densities[near.Cells[i]] += current.Of(smooth * carried, singular * carried);
        }
    }

    /// <summary>Cells in the lanes. Far from the rim the tent of a cell is worth sinc² at the wave's own phase.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void AddFar(in FringeCurrent current, EdgeColumns.Rows far, Span<ComplexVector> densities)
    {
        Span<double> lanes = stackalloc double[4 * T.Count];
        T k = T.All(current.Wave.AcrossWavenumber), curvature = T.All(current.Wave.Curvature), cosHalf = T.All(current.CosHalf);
        T turnsAhead = T.All(current.PhaseSlope * PerTurn), perTurn = T.All(PerTurn), half = T.All(0.5), one = T.All(1.0);
        for (int first = 0; first < far.Cells.Length; first += T.Count)
        {
            T x = T.Load(far.Distances[first..]), u = k * x, halfBreadth = half * k * T.Load(far.Breadths[first..]);
            (_, T sin) = Turns.CosSin(halfBreadth * perTurn);
            T sinc = sin / halfBreadth;
            T scale = T.Load(far.Spreading[first..]) * sinc * sinc / T.MultiplyAdd(x, curvature, one);
            (T cos, T minusSin) = Turns.CosSin(T.MultiplyAdd(u, perTurn, -(turnsAhead * T.Load(far.Ahead[first..]))));
            T re = scale * cos, im = -(scale * minusSin), overRoot = one / T.Sqrt(u);
            (T tailRe, T tailIm) = FresnelTail.At(T.Sqrt(u + u) * cosHalf);
            T.MultiplyAdd(re, tailRe, -(im * tailIm)).Store(lanes);
            T.MultiplyAdd(re, tailIm, im * tailRe).Store(lanes[T.Count..]);
            (re * overRoot).Store(lanes[(2 * T.Count)..]);
            (im * overRoot).Store(lanes[(3 * T.Count)..]);
            for (int i = 0; i < Math.Min(T.Count, far.Cells.Length - first); i++)
            {
                Complex smooth = new(lanes[i], lanes[T.Count + i]), singular = new(lanes[(2 * T.Count) + i], lanes[(3 * T.Count) + i]);
                densities[far.Cells[first + i]] += current.Of(smooth, singular);
            }
        }
    }

    /// <summary>∫ A w dx and ∫ S w dx over the tent w of a cell, points in the lanes; in √u neither is singular.</summary>
    private static (Complex Smooth, Complex Singular) Near(in FringeCurrent current, double distance, double breadth)
    {
        // Up one side of the tent and down the other; a cell at the rim takes the whole way from there for its second side.
        bool isFirst = distance < breadth;
        double k = current.Wave.AcrossWavenumber, top = isFirst ? 0.0 : distance, foot = distance < 2.0 * breadth ? 0.0 : distance - breadth, end = distance + breadth;
        Span<double> starts = stackalloc double[Points], lengths = stackalloc double[Points], zeros = stackalloc double[Points], scales = stackalloc double[Points];
        double first = Math.Sqrt(k * foot), middle = Math.Sqrt(k * top), last = Math.Sqrt(k * end), scale = 2.0 / (k * breadth * breadth);
        Fill(starts, first, middle);
        Fill(lengths, middle - first, last - middle);
        Fill(zeros, distance - breadth, end);
        Fill(scales, isFirst ? 0.0 : scale * (middle - first), -scale * (last - middle));
        return Sum(current, starts, lengths, zeros, scales);
    }

    private static void Fill(Span<double> points, double first, double second)
    {
        points[..PointsPerPiece].Fill(first);
        points[PointsPerPiece..].Fill(second);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static (Complex Smooth, Complex Singular) Sum(
        in FringeCurrent current, ReadOnlySpan<double> starts, ReadOnlySpan<double> lengths, ReadOnlySpan<double> zeros, ReadOnlySpan<double> scales)
    {
        T none = T.All(0.0), one = T.All(1.0), perWavenumber = T.All(1.0 / current.Wave.AcrossWavenumber), curvature = T.All(current.Wave.Curvature);
        T rootTwoCosHalf = T.All(Math.Sqrt(2.0) * current.CosHalf), perTurn = T.All(PerTurn);
        T smoothRe = none, smoothIm = none, singularRe = none, singularIm = none;
        for (int p = 0; p < Points; p += T.Count)
        {
            T root = T.MultiplyAdd(T.Load(lengths[p..]), T.Load(Nodes.AsSpan(p)), T.Load(starts[p..])), u = root * root, x = u * perWavenumber;
            T weight = T.Load(scales[p..]) * T.Load(Weights.AsSpan(p)) * (x - T.Load(zeros[p..])) / T.MultiplyAdd(x, curvature, one);
            (T cos, T sin) = Turns.CosSin(u * perTurn);
            T re = weight * cos, im = -(weight * sin), rootRe = root * re, rootIm = root * im;
            (T tailRe, T tailIm) = FresnelTail.At(root * rootTwoCosHalf);
            smoothRe += T.MultiplyAdd(rootRe, tailRe, -(rootIm * tailIm));
            smoothIm += T.MultiplyAdd(rootRe, tailIm, rootIm * tailRe);
            singularRe += re;
            singularIm += im;
        }

        return (new Complex(Sum(smoothRe), Sum(smoothIm)), new Complex(Sum(singularRe), Sum(singularIm)));
    }

    private static double Sum(T value)
    {
        Span<double> lanes = stackalloc double[T.Count];
        value.Store(lanes);
        double sum = 0.0;
        foreach (double lane in lanes)
        {
            sum += lane;
        }

        return sum;
    }
}
