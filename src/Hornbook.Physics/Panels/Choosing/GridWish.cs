namespace Hornbook.Physics.Panels.Choosing;

/// <summary>What is wished of a grid, and what a workshop can make.</summary>
public sealed record GridWish
{
    /// <summary>A wish.</summary>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    /// <param name="leak">The most of the power that may pass with the field along the metal [-]; &gt; 0, &lt; 1. −25 dB is 0.0032.</param>
    /// <param name="passed">The least of the power that must pass with the field across it [-]; &gt; 0, &lt; 1. −0.2 dB is 0.955.</param>
    /// <param name="leastMetal">Narrowest strip or thinnest wire that can be made [m]; finite, &gt; 0.</param>
    /// <param name="leastGap">Narrowest gap that can be made [m]; finite, &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public GridWish(double frequency, double leak, double passed, double leastMetal, double leastGap)
    {
        Frequency = Require.Positive(frequency);
        Leak = Require.Within(Require.Positive(leak), 0.0, 1.0);
        Passed = Require.Within(Require.Positive(passed), 0.0, 1.0);
        LeastMetal = Require.Positive(leastMetal);
        LeastGap = Require.Positive(leastGap);
    }

    /// <summary>f [Hz].</summary>
    public double Frequency { get; }

    /// <summary>The most of the power that may pass with the field along the metal [-].</summary>
    public double Leak { get; }

    /// <summary>The least of the power that must pass with the field across it [-].</summary>
    public double Passed { get; }

    /// <summary>Narrowest strip or thinnest wire that can be made [m].</summary>
    public double LeastMetal { get; }

    /// <summary>Narrowest gap that can be made [m].</summary>
    public double LeastGap { get; }

    /// <summary>Sizes are whole multiples of it [m]; 0.1 mm unless told otherwise.</summary>
    public double Step { get; init; } = 0.1e-3;

    /// <summary>Up to this angle to the normal no second beam may leave [rad]; 45° unless told otherwise, as a grid stands slantwise in a box.</summary>
    public double OneWaveUpTo { get; init; } = 0.25 * Math.PI;

    /// <summary>The longest period with one wave only, λ/(1 + sin θ) [m].</summary>
    /// <remarks>Eq. choosing-a-panel (1); [Rayleigh1907].</remarks>
    public double LongestPeriod => FreeSpace.Wavelength(Frequency) / (1.0 + Math.Sin(OneWaveUpTo));

    /// <summary>How far a grid is from the wish, the worse of the two: by what factor it leaks too much, or lets too little pass [-]; 1 or less where it is granted.</summary>
    public double Shortfall(GridFigures figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        return Math.Max(figures.PassedAlong / Leak, Passed / figures.PassedAcross);
    }
}
