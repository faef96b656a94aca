using MathNet.Numerics.Distributions;

namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>What all build errors together do, by trying many horns.</summary>
/// <param name="Trials">How many horns were tried.</param>
/// <param name="Gain">G [-].</param>
/// <param name="HalfPowerWidthE">Full angle in the E plane [rad]; null where a horn has none.</param>
/// <param name="HalfPowerWidthH">Full angle in the H plane [rad]; null where a horn has none.</param>
public sealed record BuildSpread(int Trials, Spread Gain, Spread? HalfPowerWidthE, Spread? HalfPowerWidthH)
{
    /// <summary>Trials unless told otherwise: the standard deviation comes out to about 1/√(2N) = 2 %, an end of the interval to about 5 % of its width.</summary>
    public const int DefaultTrials = 1000;

    /// <summary>Tries horns whose dimensions err independently of each other.</summary>
    /// <param name="horn">As drawn.</param>
    /// <param name="frequency">f [Hz]; above the guide's cut-off, also with the guide too narrow.</param>
    /// <param name="tolerance">How exactly it is made.</param>
    /// <param name="law">How the errors are distributed.</param>
    /// <param name="random">Where the errors come from; the same seed gives the same spread.</param>
    /// <param name="trials">How many horns; ≥ 2.</param>
    /// <remarks>Each horn is computed from its exact mouth field. Propagation of distributions: [Jcgm101].</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range, or a horn with these errors cannot exist or is not fed.</exception>
    public static BuildSpread Of(
        Horn horn, double frequency, BuildTolerance tolerance, ErrorLaw law, Random random, int trials = DefaultTrials)
    {
        ArgumentNullException.ThrowIfNull(horn);
        ArgumentNullException.ThrowIfNull(tolerance);
        ArgumentNullException.ThrowIfNull(random);
        ArgumentOutOfRangeException.ThrowIfLessThan(trials, 2);
        HornFigures[] built = new HornFigures[trials];
        for (int i = 0; i < trials; i++)
        {
            built[i] = HornFigures.Of(Drawn(tolerance, law, random).Applied(horn), frequency);
        }

        return new BuildSpread(
            trials,
            Spread.Of([.. built.Select(figures => figures.Gain)]),
            SpreadOf([.. built.Select(figures => figures.HalfPowerWidthE)]),
            SpreadOf([.. built.Select(figures => figures.HalfPowerWidthH)]));
    }

    private static HornErrors Drawn(BuildTolerance tolerance, ErrorLaw law, Random random) => new(
        Draw(tolerance.Flare, law, random),
        Draw(tolerance.Flare, law, random),
        Draw(tolerance.Flare, law, random),
        Draw(tolerance.Guide, law, random),
        Draw(tolerance.Guide, law, random));

    private static double Draw(double tolerance, ErrorLaw law, Random random) => law == ErrorLaw.Uniform
        ? ContinuousUniform.Sample(random, -tolerance, tolerance)
        : Normal.Sample(random, 0.0, tolerance / 1.96);

    private static Spread? SpreadOf(double?[] widths) =>
        widths.All(width => width.HasValue) ? Spread.Of([.. widths.Select(width => width!.Value)]) : null;
}
