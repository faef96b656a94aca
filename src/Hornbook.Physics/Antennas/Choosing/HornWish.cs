namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>From what is wanted to what is built.</summary>
public static class HornWish
{
    /// <summary>The longest horn that is offered, in wavelengths [-].</summary>
    public const double LongestInWaves = 40.0;

    /// <summary>
    /// The shortest horn for a gain, in wavelengths [-]: a blunter flare reflects, and its field is not the spherical wave of the model. A smaller gain
    /// opens the same length less.
    /// </summary>
    public const double ShortestInWaves = 1.0;

    /// <summary>The shortest horn that has a wanted gain.</summary>
    /// <param name="feed">What it is for.</param>
    /// <param name="gain">G [-], radiated norm, ohmic loss counted, mismatch not; finite, &gt; 0.</param>
    /// <returns>A horn whose exact gain is the wanted one to 1e-4 dB, or a refusal.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The gain is not finite and positive.</exception>
    public static HornChoice ForGain(Feed feed, double gain)
    {
        ArgumentNullException.ThrowIfNull(feed);
        Require.Positive(gain);
        return GainWish.Choose(feed, gain);
    }

    /// <summary>A horn that has wanted half-power widths in both planes, no shorter than the textbook's optimum flare (s ≤ 1/4, t ≤ 3/8) asks for.</summary>
    /// <param name="feed">What it is for.</param>
    /// <param name="widthE">Full angle in the E plane [rad]; &gt; 0, ≤ π.</param>
    /// <param name="widthH">Full angle in the H plane [rad]; &gt; 0, ≤ π.</param>
    /// <returns>A horn whose exact widths are the wanted ones to 1e-8 rad, or a refusal.</returns>
    /// <remarks>The plane that needs the longer flare sets the length and works at its optimum lag; the other one is then less curved.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A width is out of range.</exception>
    public static HornChoice ForBeam(Feed feed, double widthE, double widthH)
    {
        ArgumentNullException.ThrowIfNull(feed);
        Require.Within(Require.Positive(widthE), 0.0, Math.PI, nameof(widthE));
        Require.Within(Require.Positive(widthH), 0.0, Math.PI, nameof(widthH));
        return BeamWish.Choose(feed, widthE, widthH);
    }

    /// <summary>The horn of highest gain whose four walls can be cut from one sheet.</summary>
    /// <param name="feed">What it is for.</param>
    /// <param name="sheet">The sheet and the seam allowance.</param>
    /// <returns>A horn with the layout of its walls, or a refusal. Its gain is within 0.02 dB of the best that the nestings allow.</returns>
    public static HornChoice FromSheet(Feed feed, MetalSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(feed);
        ArgumentNullException.ThrowIfNull(sheet);
        return SheetWish.Choose(feed, sheet);
    }
}
