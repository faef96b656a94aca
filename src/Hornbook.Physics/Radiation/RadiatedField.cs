using System.Runtime.Intrinsics;

namespace Hornbook.Physics.Radiation;

/// <summary>The exact field of sampled currents in free space, every near-zone term included.</summary>
public static class RadiatedField
{
    // Long enough that starting a piece of work costs nothing beside it, short enough to share evenly.
    private const int ObserversPerTask = 256;

    /// <summary>E and H of the currents at points. Allocates nothing.</summary>
    /// <param name="currents">Sources.</param>
    /// <param name="wavenumber">k = 2π/λ [1/m]; finite, &gt; 0.</param>
    /// <param name="points">Observers [m], length n; finite. None may lie on a source: there the field is infinite, and NaN is returned.</param>
    /// <param name="fields">Filled with the fields, length ≥ n.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wavenumber is out of its range.</exception>
    /// <exception cref="ArgumentException">There is not room for the fields.</exception>
    /// <remarks>
    /// Eq. radiation (3) and (4): with R = r−r', g = e^{−jkR}/(4πR),
    /// E = −jkη[(1 + 1/(jkR) − 1/(kR)²) J − (1 + 3/(jkR) − 3/(kR)²)(J·R̂)R̂] g + jk(1 + 1/(jkR)) (R̂×M) g and by duality
    /// η H = −jk[…M…] g − jk(1 + 1/(jkR)) (R̂×ηJ) g. Sources: [Harrington1961], [Balanis2016]. Relative rounding error of the
    /// phase: that of kR, about 1e-16 kR.
    /// </remarks>
    public static void Evaluate(CurrentSamples currents, double wavenumber, ReadOnlySpan<Vector> points, Span<FieldSample> fields)
    {
        ArgumentNullException.ThrowIfNull(currents);
        Require.Positive(wavenumber);
        RequireRoom(points.Length, fields.Length);
        if (Vector512.IsHardwareAccelerated)
        {
            FieldKernel<Lanes512>.Evaluate(currents, wavenumber, points, fields);
        }
        else if (Vector256.IsHardwareAccelerated)
        {
            FieldKernel<Lanes256>.Evaluate(currents, wavenumber, points, fields);
        }
        else
        {
            FieldKernel<Lanes128>.Evaluate(currents, wavenumber, points, fields);
        }
    }

    /// <summary>The same for many points on all cores: for maps of the field.</summary>
    /// <inheritdoc cref="Evaluate"/>
    public static void EvaluateMap(CurrentSamples currents, double wavenumber, ReadOnlyMemory<Vector> points, Memory<FieldSample> fields)
    {
        RequireRoom(points.Length, fields.Length);
        int tasks = (points.Length + ObserversPerTask - 1) / ObserversPerTask;
        Parallel.For(0, tasks, task =>
        {
            int first = task * ObserversPerTask;
            int length = Math.Min(ObserversPerTask, points.Length - first);
            Evaluate(currents, wavenumber, points.Span.Slice(first, length), fields.Span.Slice(first, length));
        });
    }

    private static void RequireRoom(int points, int fields)
    {
        if (fields < points)
        {
            throw new ArgumentException($"room for {fields} fields at {points} points; as many are needed");
        }
    }
}
