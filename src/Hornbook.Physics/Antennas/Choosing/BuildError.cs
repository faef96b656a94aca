namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>What an error in one dimension does.</summary>
/// <param name="Dimension">Where the error is.</param>
/// <param name="Error">How large, ± [m].</param>
/// <param name="Smaller">The horn with that dimension too small by the error.</param>
/// <param name="Larger">The horn with that dimension too large by the error.</param>
public sealed record BuildError(HornDimension Dimension, double Error, HornFigures Smaller, HornFigures Larger)
{
    /// <summary>Each dimension of a horn in error, one at a time.</summary>
    /// <param name="horn">As drawn.</param>
    /// <param name="frequency">f [Hz]; above the guide's cut-off, also with the guide too narrow.</param>
    /// <param name="tolerance">How exactly it is made; below the dimensions themselves. Dimensions with no tolerance are left out.</param>
    /// <returns>In the order of <see cref="HornDimension"/>; a plane that does not flare has no mouth dimension of its own.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A horn with these errors cannot exist or is not fed.</exception>
    public static IReadOnlyList<BuildError> Each(Horn horn, double frequency, BuildTolerance tolerance)
    {
        ArgumentNullException.ThrowIfNull(horn);
        ArgumentNullException.ThrowIfNull(tolerance);
        return [.. Dimensions(horn)
            .Where(dimension => tolerance.Of(dimension) > 0.0)
            .Select(dimension => In(horn, frequency, dimension, tolerance.Of(dimension)))];
    }

    private static BuildError In(Horn horn, double frequency, HornDimension dimension, double error) => new(
        dimension,
        error,
        HornFigures.Of(HornErrors.In(dimension, -error).Applied(horn), frequency),
        HornFigures.Of(HornErrors.In(dimension, error).Applied(horn), frequency));

    private static IEnumerable<HornDimension> Dimensions(Horn horn) => Enum.GetValues<HornDimension>().Where(dimension =>
        (dimension != HornDimension.MouthWidth || horn.MouthWidth > horn.Guide.Width)
        && (dimension != HornDimension.MouthHeight || horn.MouthHeight > horn.Guide.Height));
}
