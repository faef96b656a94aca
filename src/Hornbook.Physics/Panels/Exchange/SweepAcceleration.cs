using Hornbook.Physics.Radiation;
using MathNet.Numerics.LinearAlgebra;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>Makes sweeps that throw a wave to and fro settle sooner: of the last sweeps, the mixture whose changes cancel best goes into the next one.</summary>
/// <remarks>Anderson's mixing: [Anderson1965]; in this form [WalkerNi2011]. For a linear exchange it is as good as GMRES.</remarks>
internal sealed class SweepAcceleration
{
    // More than eight earlier sweeps did not help where it was tried: mirrors, half mirrors and screens face to face.
    private const int Memory = 8;

    private readonly List<CurrentSamples[]> _after = [];
    private readonly List<CurrentSamples[]> _change = [];

    /// <summary>What to put into the next sweep.</summary>
    /// <param name="before">What the last sweep began with.</param>
    /// <param name="after">What it ended with.</param>
    internal CurrentSamples[] Next(CurrentSamples[] before, CurrentSamples[] after)
    {
        Remember(after, Combined(after, before, -1.0));
        int steps = _after.Count - 1;
        if (steps == 0)
        {
            return after;
        }

        CurrentSamples[][] changes = Steps(_change), results = Steps(_after);
        Matrix<Complex> gram = Matrix<Complex>.Build.Dense(steps, steps, (i, j) => Inner(changes[i], changes[j]));
        Vector<Complex> right = Vector<Complex>.Build.Dense(steps, i => Inner(changes[i], _change[^1]));
        Vector<Complex> shares = gram.Svd().Solve(right);
        CurrentSamples[] next = after;
        for (int i = 0; i < steps; i++)
        {
            next = Combined(next, results[i], -shares[i]);
        }

        return next;
    }

    private void Remember(CurrentSamples[] after, CurrentSamples[] change)
    {
        _after.Add(after);
        _change.Add(change);
        if (_after.Count > Memory)
        {
            _after.RemoveAt(0);
            _change.RemoveAt(0);
        }
    }

    private static CurrentSamples[][] Steps(List<CurrentSamples[]> history) =>
        [.. Enumerable.Range(0, history.Count - 1).Select(i => Combined(history[i + 1], history[i], -1.0))];

    private static CurrentSamples[] Combined(CurrentSamples[] a, CurrentSamples[] b, Complex factor) =>
        [.. a.Zip(b, (first, second) => first.Plus(second, factor))];

    private static Complex Inner(CurrentSamples[] a, CurrentSamples[] b) =>
        a.Zip(b, CurrentSamples.Inner).Aggregate(Complex.Zero, (sum, part) => sum + part);
}
