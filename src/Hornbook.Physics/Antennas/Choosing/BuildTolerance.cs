namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>How exactly a horn is made.</summary>
public sealed record BuildTolerance
{
    /// <summary>A tolerance.</summary>
    /// <param name="flare">Of mouth width, mouth height and length, ± [m]; finite, ≥ 0.</param>
    /// <param name="guide">Of the guide's width and height, ± [m]; finite, ≥ 0. Drawn guide is bought, not built, and is good to some 0.05 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public BuildTolerance(double flare, double guide = 0.0)
    {
        Flare = Require.NotNegative(flare);
        Guide = Require.NotNegative(guide);
    }

    /// <summary>Of mouth width, mouth height and length, ± [m].</summary>
    public double Flare { get; }

    /// <summary>Of the guide's width and height, ± [m].</summary>
    public double Guide { get; }

    /// <summary>Of one dimension, ± [m].</summary>
    internal double Of(HornDimension dimension) => dimension is HornDimension.GuideWidth or HornDimension.GuideHeight ? Guide : Flare;
}
