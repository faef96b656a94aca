using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Complex = System.Numerics.Complex;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>What the minima of a curve say of a straight and a mirrored wave: the wavelength, and what the mirror does to the phase.</summary>
/// <param name="Apart">From one minimum to the next as the hand moves [m]; null with fewer than two.</param>
/// <param name="Wavelength">From the ways, worked out exactly at each minimum [m]; null with fewer than two.</param>
/// <param name="HalfWavesLost">In the mirror [-], −0.5 to 1.5; null without a minimum.</param>
/// <param name="HalfWavesInBooks">The same by the sheet's own answer to a plane wave [-]; null without a mirror.</param>
/// <param name="InBooks">c/f [m].</param>
/// <param name="Law">Two waves, tied to the strongest point [-], length of the curve; null without a mirror.</param>
internal sealed record MirrorFringes(double? Apart, double? Wavelength, double? HalfWavesLost, double? HalfWavesInBooks, double InBooks, IReadOnlyList<double>? Law)
{
    internal static MirrorFringes Of(Scene scene, Curve curve, Func<Setting, Mirrored?> mirror)
    {
        double wavelength = FreeSpace.Wavelength(scene.Plan.Frequency);
        CurvePoint[] points = [.. curve.Points.OrderBy(point => point.Setting.At)];
        if (points.Any(point => mirror(point.Setting) is null))
        {
            return new MirrorFringes(null, null, null, null, wavelength, null);
        }

        double[] at = [.. points.Select(point => point.Setting.At)];
        double[] longer = [.. points.Select(point => mirror(point.Setting)!.Longer(point.Setting))];
        double[] minima = Extremes.Minima(at, [.. points.Select(point => Decibels.FromRatio(point.Reading.Link))]);
        double[] ways = [.. minima.Select(place => MathNet.Numerics.Interpolate.CubicSpline(at, longer).Interpolate(place))];
        Complex[] besides = [.. curve.Points.Select(point => mirror(point.Setting)!.Beside(scene, point.Setting))];
        double[] law = [.. curve.Points.Zip(besides, (point, beside) => Together(beside, Math.Tau * mirror(point.Setting)!.Longer(point.Setting) / wavelength))];
        double tie = curve.Strongest.Reading.Link / law.Max();
        return new MirrorFringes(
            Spacing(minima),
            Spacing(ways),
            ways.Length > 0 ? ways.Average(way => HalfWaves((way / wavelength) - 0.5)) : null,
            HalfWaves(besides[points.Length / 2].Phase / Math.Tau),
            wavelength,
            [.. law.Select(share => share * tie)]);
    }

    /// <summary>As an evaluation, with more numbers put first.</summary>
    internal LawEvaluation Beside(IReadOnlyList<Comparison> first) => new(
    [
        .. first,
        new("wavelength", ComparedQuantity.Length, Wavelength, InBooks, "how much longer the mirrored way becomes from one minimum to the next, straight from the geometry; c/f in books"),
        new("half waves lost", ComparedQuantity.Number, HalfWavesLost, HalfWavesInBooks, "in the mirror, as the minima say; 1 for a field along a metal mirror. A horn's wave starts behind its mouth, which makes it a little more"),
    ])
    {
        Law = Law,
        LawName = Law is null ? string.Empty : "two waves, straight and mirrored",
    };

    private static double? Spacing(double[] places) => places.Length > 1 ? Math.Abs(places[^1] - places[0]) / (places.Length - 1) : null;

    private static double Together(Complex beside, double phase) => Math.Pow((1.0 + (beside * Complex.Exp(new Complex(0.0, -phase)))).Magnitude, 2.0);

    // Whole waves do not count.
    private static double HalfWaves(double waves)
    {
        double half = 2.0 * (waves - Math.Floor(waves));
        return half > 1.5 ? half - 2.0 : half;
    }
}
