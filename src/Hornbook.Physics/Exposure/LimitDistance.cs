namespace Hornbook.Physics.Exposure;

/// <summary>A limit and how far it keeps people from a source.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="Density">What it allows at the frequency of the source [W/m²].</param>
/// <param name="OnAxis">From the mouth's centre along the axis [m]; 0 where the limit is met nowhere.</param>
/// <param name="Anywhere">The largest in any direction [m].</param>
public sealed record LimitDistance(ExposureLimit Limit, double Density, double OnAxis, double Anywhere);

/// <summary>How far each published limit keeps people from a source.</summary>
public static class LimitDistances
{
    /// <summary>All limits that cover the frequency of the source, also those that are not in force, in the order in which they are kept.</summary>
    /// <param name="field">The field of the source at its worst-case power.</param>
    /// <param name="progress">Told the share done; null where nobody wants to know.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static IReadOnlyList<LimitDistance> Of(ExposureField field, IProgress<double>? progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(field);
        double frequency = field.Antenna.Frequency;
        ExposureLimit[] limits = [.. ExposureLimits.All.Where(limit => limit.Band.Contains(frequency))];
        double[] densities = [.. limits.Select(limit => limit.PowerDensity(frequency)).Distinct()]; // many instruments say the same
        int done = 0;
        Dictionary<double, (double OnAxis, double Anywhere)> found = densities.AsParallel().WithCancellation(cancellation)
            .Select(density =>
            {
                (double, double) distances = (KeepOut.OnAxis(field, density), KeepOut.Largest(field, density));
                progress?.Report((double)Interlocked.Increment(ref done) / densities.Length);
                return (density, distances);
            })
            .ToDictionary(one => one.density, one => one.distances);
        return [.. limits.Select(limit => (Limit: limit, Density: limit.PowerDensity(frequency)))
            .Select(one => new LimitDistance(one.Limit, one.Density, found[one.Density].OnAxis, found[one.Density].Anywhere))];
    }
}
