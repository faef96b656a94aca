using MathNet.Numerics.RootFinding;

namespace Hornbook.Physics.Antennas;

/// <summary>The numbers that are read off a cut through the pattern.</summary>
/// <param name="Plane">The cut.</param>
/// <param name="HalfPowerWidth">Full angle between the half-power points [rad]; null where the power never falls so far.</param>
/// <param name="TenDbWidth">Full angle between the points 10 dB down [rad]; null where the power never falls so far.</param>
/// <param name="FirstMinimum">The first minimum beside the beam, a null where the phase over the mouth is even; null where there is none.</param>
/// <param name="SideLobe">The highest lobe beyond the first minimum; null where there is none.</param>
public sealed record BeamShape(
    PatternPlane Plane, double? HalfPowerWidth, double? TenDbWidth, PatternFeature? FirstMinimum, PatternFeature? SideLobe)
{
    // A quarter of a degree resolves every lobe of an antenna smaller than a hundred wavelengths.
    private const int Steps = 360;
    private const double Step = 0.5 * Math.PI / Steps;
    private const double Accuracy = 1e-10;

    /// <summary>Reads a cut of an antenna, from its axis to 90°.</summary>
    public static BeamShape Of(Antenna antenna, PatternPlane plane)
    {
        ArgumentNullException.ThrowIfNull(antenna);
        IReadOnlyList<PatternPoint> cut = FarPattern.Cut(antenna, plane, 0.0, 0.5 * Math.PI, Steps + 1);
        double peak = cut[0].CoPolar;
        double Level(double angle) => FarPattern.Towards(antenna, plane, angle).CoPolar / peak;
        double[] levels = [.. cut.Select(point => point.CoPolar / peak)];
        PatternFeature? minimum = FirstMinimumOf(levels);
        return new BeamShape(
            plane, Width(Level, levels, 0.5), Width(Level, levels, 0.1), minimum, minimum is null ? null : HighestBeyond(levels, minimum.Angle));
    }

    private static double? Width(Func<double, double> level, double[] levels, double wanted)
    {
        int below = Array.FindIndex(levels, l => l < wanted);
        return below < 1
            ? null
            : 2.0 * Brent.FindRoot(a => level(a) - wanted, (below - 1) * Step, below * Step, Accuracy);
    }

    private static PatternFeature? FirstMinimumOf(double[] levels)
    {
        for (int i = 1; i + 1 < levels.Length; i++)
        {
            if (levels[i] <= levels[i - 1] && levels[i] < levels[i + 1])
            {
                return new PatternFeature(i * Step, levels[i]);
            }
        }

        return null;
    }

    private static PatternFeature? HighestBeyond(double[] levels, double angle)
    {
        PatternFeature? highest = null;
        for (int i = (int)Math.Round(angle / Step) + 1; i + 1 < levels.Length; i++)
        {
            bool top = levels[i] > levels[i - 1] && levels[i] >= levels[i + 1];
            if (top && levels[i] > (highest?.Level ?? 0.0))
            {
                highest = new PatternFeature(i * Step, levels[i]);
            }
        }

        return highest;
    }
}
