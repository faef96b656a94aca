namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>What length buys: the best gain for each length.</summary>
public static class TradeCurve
{
    /// <summary>The horn of highest gain at each of several lengths.</summary>
    /// <param name="feed">What it is for.</param>
    /// <param name="shortest">First length [m]; finite, &gt; 0.</param>
    /// <param name="longest">Last length [m]; ≥ the first, at most <see cref="HornWish.LongestInWaves"/> wavelengths.</param>
    /// <param name="points">How many; ≥ 2.</param>
    /// <returns>Ascending lengths with even ratios; gain grows with each, by about 3 dB for twice the length.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static IReadOnlyList<HornFigures> Of(Feed feed, double shortest, double longest, int points)
    {
        ArgumentNullException.ThrowIfNull(feed);
        ArgumentOutOfRangeException.ThrowIfLessThan(points, 2);
        Require.Positive(shortest);
        Require.Within(longest, shortest, HornWish.LongestInWaves * feed.Wavelength);
        double ratio = Math.Pow(longest / shortest, 1.0 / (points - 1));
        return [.. Enumerable.Range(0, points)
            .Select(i => HornFigures.Of(OptimumMouth.ForLength(feed, shortest * Math.Pow(ratio, i)), feed.Frequency))];
    }
}
