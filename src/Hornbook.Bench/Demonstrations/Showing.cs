namespace Hornbook.Bench.Demonstrations;

/// <summary>How a demonstration is shown in front of people.</summary>
/// <param name="Place">Its place in the show, from 1; null for that in the order of the file.</param>
/// <param name="Duration">How long it takes, changes before it included [s]; &gt; 0.</param>
/// <param name="IsAside">Whether it is left out of the show.</param>
public sealed record Showing(int? Place, double Duration, bool IsAside)
{
    /// <summary>Where a bench file says nothing: in its turn, for three minutes.</summary>
    public static Showing Usual { get; } = new(null, 180.0, false);
}
