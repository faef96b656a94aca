namespace Hornbook.Physics.Guides;

/// <summary>The modes of a rectangular guide in the order in which they begin to travel.</summary>
public static class GuideModes
{
    /// <summary>The first modes by cut-off frequency.</summary>
    /// <param name="guide">The guide.</param>
    /// <param name="count">How many; ≥ 1.</param>
    /// <param name="relativePermittivity">Of a lossless filling, ε_r [-]; ≥ 1.</param>
    /// <returns>Length <paramref name="count"/>, ascending cut-off; where cut-offs are equal, TE comes before TM, then the larger m first.</returns>
    /// <remarks>Eq. guides (1): f_c = c/(2√ε_r) √((m/a)² + (n/b)²); TE: m + n ≥ 1, TM: m, n ≥ 1. Source: [Pozar2012] § 3.3.</remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> or <paramref name="relativePermittivity"/> is out of range.</exception>
    public static IReadOnlyList<GuideMode> First(RectangularGuide guide, int count, double relativePermittivity = 1.0)
    {
        ArgumentNullException.ThrowIfNull(guide);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);

        // TEm0 with m = 1 … count are `count` modes below the ceiling already, so nothing above it can be among the first.
        double ceiling = Cutoff(guide, count, 0, relativePermittivity);
        return [.. Sorted(UpTo(guide, ceiling, relativePermittivity)).Take(count)];
    }

    /// <summary>The modes that travel at a frequency: those with a cut-off below it, in ascending order.</summary>
    /// <param name="guide">The guide.</param>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    /// <param name="relativePermittivity">Of a lossless filling, ε_r [-]; ≥ 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static IReadOnlyList<GuideMode> Travelling(RectangularGuide guide, double frequency, double relativePermittivity = 1.0)
    {
        ArgumentNullException.ThrowIfNull(guide);
        Require.Positive(frequency);
        return [.. Sorted(UpTo(guide, frequency, relativePermittivity)).Where(mode => mode.CutoffFrequency < frequency)];
    }

    private static IEnumerable<GuideMode> UpTo(RectangularGuide guide, double ceiling, double relativePermittivity)
    {
        for (int m = 0; Cutoff(guide, m, 0, relativePermittivity) <= ceiling; m++)
        {
            for (int n = m == 0 ? 1 : 0; Cutoff(guide, m, n, relativePermittivity) <= ceiling; n++)
            {
                double cutoff = Cutoff(guide, m, n, relativePermittivity);
                yield return new GuideMode(ModeKind.TransverseElectric, m, n, cutoff);
                if (m > 0 && n > 0)
                {
                    yield return new GuideMode(ModeKind.TransverseMagnetic, m, n, cutoff);
                }
            }
        }
    }

    // Rounded, so that the last bit does not decide the order of modes whose cut-offs are equal (TE20 and TE01 where a = 2b).
    private static IEnumerable<GuideMode> Sorted(IEnumerable<GuideMode> modes) => modes
        .OrderBy(mode => Math.Round(mode.CutoffFrequency / 1e3))
        .ThenBy(mode => mode.Kind)
        .ThenByDescending(mode => mode.M);

    private static double Cutoff(RectangularGuide guide, int m, int n, double relativePermittivity) =>
        Constants.SpeedOfLight / (2.0 * Math.Sqrt(Require.Within(relativePermittivity, 1.0, double.MaxValue)))
        * Math.Sqrt(Math.Pow(m / guide.Width, 2.0) + Math.Pow(n / guide.Height, 2.0));
}
