using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Complex = System.Numerics.Complex;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>The maxima of two half mirrors as a curve shows them, beside those of a plane wave between endless mirrors.</summary>
internal static class HalfMirrorsEvaluation
{
    internal static LawEvaluation Of(Scene scene, HalfMirrorsDemonstration demonstration, Curve curve)
    {
        double wavelength = FreeSpace.Wavelength(scene.Plan.Frequency);
        double[] at = curve.Positions, levels = [.. curve.Links.Select(Decibels.FromRatio)];
        Array.Sort(at, levels);
        double[] maxima = Extremes.Maxima(at, levels);
        double? apart = maxima.Length > 1 ? (maxima[^1] - maxima[0]) / (maxima.Length - 1) : null;
        Complex roundTrip = RoundTrip(scene, demonstration);
        double[] law = [.. curve.Points.Select(point => Airy(roundTrip, 2.0 * Math.PI / wavelength, point.Setting.At))];
        double tie = curve.Strongest.Reading.Link / law.Max();
        return new LawEvaluation(
        [
            new("maxima apart", ComparedQuantity.Length, apart, 0.5 * wavelength, "half a wavelength: that much more of a gap is one wavelength more to and fro"),
            new("wavelength", ComparedQuantity.Length, 2.0 * apart, wavelength, "twice that; c/f in books"),
            new("maxima over minima", ComparedQuantity.Level, TextbookComparison.ErrorDb(curve.Strongest.Reading.Link, curve.Weakest.Reading.Link), ContrastDb(roundTrip.Magnitude),
                "endless mirrors and a plane wave do not let any of it walk off sideways"),
            new("width of a maximum", ComparedQuantity.Length, WidthOf(at, levels, maxima, 0.25 * wavelength), Width(roundTrip.Magnitude, wavelength),
                "between its half-power places; the more the mirrors return, the narrower"),
        ])
        {
            Law = [.. law.Select(share => share * tie)],
            LawName = "endless mirrors and a plane wave",
        };
    }

    // The highest maximum of which both flanks are on the curve, half-way to the next on either side.
    private static double? WidthOf(double[] at, double[] levels, double[] maxima, double flank)
    {
        double[] whole = [.. maxima.Where(place => place - flank >= at[0] && place + flank <= at[^1])];
        return whole.Select(place => Enumerable.Range(0, at.Length).Where(i => Math.Abs(at[i] - place) <= flank).ToArray())
            .Where(points => points.Length >= 3)
            .OrderByDescending(points => points.Max(i => levels[i]))
            .Select(points => HalfPower.Of([.. points.Select(i => at[i])], [.. points.Select(i => Decibels.ToRatio(levels[i]))]).Width)
            .FirstOrDefault();
    }

    // What one way to and fro makes of the wave at a shift of zero; the second mirror returns by the face that it turns to the first one.
    private static Complex RoundTrip(Scene scene, HalfMirrorsDemonstration demonstration)
    {
        Pose there = scene.Plan.Source.Pose;
        BenchPanel first = scene.Plan.Panels.Named(demonstration.First), second = scene.Plan.Panels.Named(demonstration.Second);
        double gap = Vector.Dot(second.Pose.Position - first.Pose.Position, there.Forward);
        double k = FreeSpace.Wavenumber(scene.Plan.Frequency);
        return PlaneWave.Kept(scene.Plan.Frequency, there, second).Returned * PlaneWave.Kept(scene.Plan.Frequency, there.Flipped(), first).Returned * Complex.Exp(new Complex(0.0, -2.0 * k * gap));
    }

    private static double Airy(Complex roundTrip, double k, double shift)
    {
        double all = (1.0 - (roundTrip * Complex.Exp(new Complex(0.0, -2.0 * k * shift)))).Magnitude;
        return 1.0 / (all * all);
    }

    private static double ContrastDb(double returned) => TextbookComparison.ErrorDb(Math.Pow(1.0 + returned, 2.0), Math.Pow(1.0 - returned, 2.0));

    // Airy's sum falls to half where sin²(k s) = (1 − R)²/4R [BornWolf1999] § 7.6; below R = 0.17 it never does.
    private static double? Width(double returned, double wavelength)
    {
        double sine = (1.0 - returned) / (2.0 * Math.Sqrt(returned));
        return sine < 1.0 ? Math.Asin(sine) * wavelength / Math.PI : null;
    }
}
