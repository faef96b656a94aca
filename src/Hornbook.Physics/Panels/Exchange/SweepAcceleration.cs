using Hornbook.Physics.Radiation;
using MathNet.Numerics.LinearAlgebra;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>Makes sweeps that throw a wave to and fro settle sooner: of the last sweeps, the mixture whose changes cancel best goes into the next one.</summary>
/// <remarks>Anderson's mixing: [Anderson1965]; in this form [WalkerNi2011]. For a linear exchange it is as good as GMRES.</remarks>
internal sealed class SweepAcceleration
{
    // More than eight sweeps, seven steps, did not help where it was tried: mirrors, half mirrors and screens face to face.
    private const int MostSteps = 7;

    // Of the square of a step of length one: steps that point the same way to rounding share their part instead of fighting over it.
    private const double Ridge = 1e-12;

    // From one sweep to the next: by how much the result moved, and by how much its change.
    private readonly List<(CurrentSamples[] Result, CurrentSamples[] Change)> _steps = [];
    private (CurrentSamples[] Result, CurrentSamples[] Change)? _latest;

    /// <summary>What to put into the next sweep.</summary>
    /// <param name="before">What the last sweep began with.</param>
    /// <param name="after">What it ended with.</param>
    internal CurrentSamples[] Next(CurrentSamples[] before, CurrentSamples[] after)
    {
        CurrentSamples[] change = Combined(after, before, -1.0);
        Remember(after, change);
        if (_steps.Count == 0)
        {
            return after;
        }

        Vector<Complex> shares = Shares(change);
        CurrentSamples[] next = after;
        for (int i = 0; i < _steps.Count; i++)
        {
            next = Combined(next, _steps[i].Result, -shares[i]);
        }

        return next;
    }

    // The steps whose changes together come closest to the last one, each measured by its own length: how strong the source is must not matter.
    private Vector<Complex> Shares(CurrentSamples[] change)
    {
        double[] lengths = [.. _steps.Select(step => Math.Sqrt(Inner(step.Change, step.Change).Real))];
        Matrix<Complex> gram = Matrix<Complex>.Build.Dense(_steps.Count, _steps.Count);
        for (int i = 0; i < _steps.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                gram[i, j] = Inner(_steps[i].Change, _steps[j].Change) / (lengths[i] * lengths[j]);
                gram[j, i] = Complex.Conjugate(gram[i, j]);
            }

            gram[i, i] = 1.0 + Ridge;
        }

        Vector<Complex> right = Vector<Complex>.Build.Dense(_steps.Count, i => Inner(_steps[i].Change, change) / lengths[i]);
        return gram.Solve(right).MapIndexed((i, share) => share / lengths[i]);
    }

    private void Remember(CurrentSamples[] after, CurrentSamples[] change)
    {
        if (_latest is { } latest)
        {
            CurrentSamples[] step = Combined(change, latest.Change, -1.0);
            if (Inner(step, step).Real > 0.0)
            {
                _steps.Add((Combined(after, latest.Result, -1.0), step));
            }
        }

        _latest = (after, change);
        if (_steps.Count > MostSteps)
        {
            _steps.RemoveAt(0);
        }
    }

    private static CurrentSamples[] Combined(CurrentSamples[] a, CurrentSamples[] b, Complex factor) =>
        [.. a.Zip(b, (first, second) => first.Plus(second, factor))];

    private static Complex Inner(CurrentSamples[] a, CurrentSamples[] b) =>
        a.Zip(b, CurrentSamples.Inner).Aggregate(Complex.Zero, (sum, part) => sum + part);
}
