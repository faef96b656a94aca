using Hornbook.Physics.Radiation;
using MathNet.Numerics.LinearAlgebra;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>Makes sweeps that throw a wave to and fro settle sooner: of the last sweeps, the mixture whose changes cancel best goes into the next one.</summary>
/// <remarks>Anderson's mixing: [Anderson1965]; in this form [WalkerNi2011]. For a linear exchange it is as good as GMRES.</remarks>
/// <param name="mostSteps">How many steps from sweep to sweep it remembers.</param>
internal sealed class SweepAcceleration(int mostSteps = SweepAcceleration.UsualSteps)
{
    // More than eight sweeps, seven steps, did not help where it was tried: mirrors, half mirrors and screens face to face.
    private const int UsualSteps = 7;

    // Of the square of a step of length one: steps that point the same way to rounding share their part instead of fighting over it.
    private const double Ridge = 1e-12;

    private readonly List<Step> _steps = [];
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
        return [.. after.Select((panel, i) => panel.Plus([.. _steps.Select((step, k) => (step.Result[i], -shares[k]))]))];
    }

    /// <summary>The sweeps go on from elsewhere, or with another source: what was learnt of the steps still holds, but none leads there.</summary>
    internal void Leap() => _latest = null;

    // The steps whose changes together come closest to the last one, each measured by its own length: how strong the source is must not matter.
    private Vector<Complex> Shares(CurrentSamples[] change)
    {
        double[] lengths = [.. _steps.Select(step => step.Length)];
        Matrix<Complex> gram = Matrix<Complex>.Build.Dense(_steps.Count, _steps.Count);
        for (int i = 0; i < _steps.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                gram[i, j] = _steps[i].WithEarlier[j] / (lengths[i] * lengths[j]);
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
            double squared = Inner(step, step).Real;
            if (squared > 0.0)
            {
                _steps.Add(new Step(Combined(after, latest.Result, -1.0), step, Math.Sqrt(squared), [.. _steps.Select(earlier => Inner(step, earlier.Change))]));
            }
        }

        _latest = (after, change);
        if (_steps.Count > mostSteps)
        {
            _steps.RemoveAt(0);
            _steps.ForEach(step => step.WithEarlier.RemoveAt(0));
        }
    }

    /// <summary>From one sweep to the next.</summary>
    /// <param name="Result">By how much the result moved.</param>
    /// <param name="Change">By how much its change did.</param>
    /// <param name="Length">Of that.</param>
    /// <param name="WithEarlier">Its products with those of the steps before it, which do not change.</param>
    private sealed record Step(CurrentSamples[] Result, CurrentSamples[] Change, double Length, List<Complex> WithEarlier);

    private static CurrentSamples[] Combined(CurrentSamples[] a, CurrentSamples[] b, Complex factor) =>
        [.. a.Zip(b, (first, second) => first.Plus(second, factor))];

    private static Complex Inner(CurrentSamples[] a, CurrentSamples[] b) =>
        a.Zip(b, CurrentSamples.Inner).Aggregate(Complex.Zero, (sum, part) => sum + part);
}
