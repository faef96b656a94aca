using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Complex = System.Numerics.Complex;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>Bright and dark behind slits as a curve shows them, beside the grating law and the ways worked out exactly.</summary>
internal static class SlitsEvaluation
{
    // Farther apart than that, a fringe of the curve and one of the law are not the same one.
    private const double SameFringe = Math.PI / 45.0;

    internal static LawEvaluation Of(Scene scene, BenchPanel plate, Curve curve)
    {
        IReadOnlyList<(double Middle, double Width)> slits = Openings.Slits(plate.Panel.Surface);
        double wavelength = FreeSpace.Wavelength(scene.Plan.Frequency);
        CurvePoint[] points = [.. curve.Points.OrderBy(point => point.Setting.At)];
        double[] law = [.. curve.Points.Select(point => Law(slits, plate.Pose, point.Setting, wavelength))];
        double tie = curve.Strongest.Reading.Link / law.DefaultIfEmpty(1.0).Max();
        double[] at = [.. points.Select(point => point.Setting.At)];
        double[] levels = [.. points.Select(point => Decibels.FromRatio(point.Reading.Link))];
        double[] lawLevels = [.. points.Select(point => Decibels.FromRatio(Law(slits, plate.Pose, point.Setting, wavelength) + double.Epsilon))];
        IEnumerable<Comparison> dark = Fringes("dark", Extremes.Minima(at, levels), Extremes.Minima(at, lawLevels), DarkInBooks(slits, wavelength));
        IEnumerable<Comparison> bright = slits.Count > 1
            ? Fringes("bright", Extremes.Maxima(at, levels), Extremes.Maxima(at, lawLevels), order => order * wavelength / Spacing(slits))
            : [];
        return new LawEvaluation([.. bright, .. dark, new("depth", ComparedQuantity.Level, TextbookComparison.ErrorDb(curve.Strongest.Reading.Link, curve.Weakest.Reading.Link), null, "strongest over weakest")])
        {
            Law = slits.Count > 0 ? [.. law.Select(share => share * tie)] : null,
            LawName = slits.Count > 0 ? "a ray through each slit, each slit with the beam of its width" : string.Empty,
        };
    }

    // m λ/d bright and, between two slits, (m − ½) λ/d dark; one slit is dark at m λ/w [BornWolf1999].
    private static Func<int, double> DarkInBooks(IReadOnlyList<(double Middle, double Width)> slits, double wavelength) => slits.Count switch
    {
        1 => order => order * wavelength / slits[0].Width,
        2 => order => (order - 0.5) * wavelength / Spacing(slits),
        _ => _ => double.NaN,
    };

    private static double Spacing(IReadOnlyList<(double Middle, double Width)> slits) => (slits[^1].Middle - slits[0].Middle) / (slits.Count - 1);

    // Each order as far as the curve goes on both sides; its angle is half of that between the two.
    private static IEnumerable<Comparison> Fringes(string what, double[] onBench, double[] byLaw, Func<int, double> sine)
    {
        for (int order = 1; sine(order) < 1.0; order++)
        {
            double angle = Math.Asin(sine(order));
            if (Both(byLaw, angle) is not double exact)
            {
                yield break;
            }

            yield return new Comparison($"{what} {order}", ComparedQuantity.Angle, Both(onBench, exact), angle,
                $"half the angle between the two; {InWords.Angle(exact)} with the ways worked out exactly and the beam of a slit of this width");
        }
    }

    private static double? Both(double[] fringes, double angle) => Near(fringes, angle) - Near(fringes, -angle) is double between ? 0.5 * between : null;

    private static double? Near(double[] fringes, double angle) => fringes
        .Where(fringe => Math.Abs(fringe - angle) < SameFringe)
        .OrderBy(fringe => Math.Abs(fringe - angle))
        .Select(fringe => (double?)fringe)
        .FirstOrDefault();

    private static double Law(IReadOnlyList<(double Middle, double Width)> slits, Pose plate, Setting setting, double wavelength)
    {
        Complex sum = Complex.Zero;
        foreach ((double middle, double width) in slits)
        {
            Vector place = plate.ToBench(new Vector(0.0, middle, 0.0));
            Vector arriving = place - setting.Source.Pose.Position, leaving = setting.Receiver.Pose.Position - place;
            double turned = Vector.Dot(leaving.Unit, plate.Left) - Vector.Dot(arriving.Unit, plate.Left);
            double amplitude = width * Sinc(Math.PI * width * turned / wavelength) / leaving.Length;
            sum += Complex.FromPolarCoordinates(amplitude, -Math.Tau * (arriving.Length + leaving.Length) / wavelength);
        }

        return (sum * Complex.Conjugate(sum)).Real;
    }

    private static double Sinc(double x) => x == 0.0 ? 1.0 : Math.Sin(x) / x;
}
