using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Complex = System.Numerics.Complex;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>What a zone plate gains, beside evenly lit zones and beside zones lit by the horns that stand there.</summary>
internal static class ZonePlateEvaluation
{
    internal static LawEvaluation Of(Scene scene, BenchPanel plate, Curve curve)
    {
        IReadOnlyList<(double Inner, double Outer)> rings = Openings.Rings(plate.Panel.Surface);
        double wavelength = FreeSpace.Wavelength(scene.Plan.Frequency);
        double away = (plate.Pose.Position - scene.Plan.Source.Pose.Position).Length;
        double[] open = [.. curve.Points.Select(point => scene.Read(point.Setting.Source, point.Setting.Receiver, point.Setting.Panels.Without(plate.Name)).Link)];
        double[] gains = [.. curve.Links.Zip(open, (link, without) => link / without)];
        double[] byLaw = [.. curve.Points.Select(point => Gain(scene, rings, away, point.Setting, wavelength))];
        double? focus = rings.Count > 0 ? Focus(rings[0].Inner > 0.0 ? rings[0].Inner : rings[0].Outer, away, 0.5 * wavelength) : null;
        double? there = focus is double place ? At(curve.Positions, gains, place) : null;
        double? promised = focus is double same ? At(curve.Positions, byLaw, same) : null;
        return new LawEvaluation(
        [
            new("gain at the focus", ComparedQuantity.Level, there is double gain ? Decibels.FromRatio(gain) : null, Decibels.FromRatio(Math.Pow(2.0 * rings.Count, 2.0)),
                "beside the bench without the plate; in books every open zone gives twice the open wave" + (promised is double law ? $"; {InWords.Decibels(Decibels.FromRatio(law))} with the zones as unevenly lit as these two antennas light them" : string.Empty)),
            new("most to be had", ComparedQuantity.Level, Decibels.FromRatio(curve.Strongest.Reading.Link / open[curve.Points.ToList().IndexOf(curve.Strongest)]), null, "beside the bench without the plate, where the tone is strongest"),
            new("strongest at", ComparedQuantity.Length, curve.Strongest.Setting.At, focus, "from the plate; books say where the zones are in step. Nearer by, the same share of the wave is stronger"),
        ])
        {
            Law = rings.Count > 0 ? [.. byLaw.Zip(open, (share, without) => share * without)] : null,
            LawName = rings.Count > 0 ? "open zones, each lit as the antennas light it" : string.Empty,
        };
    }

    // √(b² + r²) − b = λ/2 − (√(a² + r²) − a), r the first circle: the way by it is half a wavelength longer.
    private static double? Focus(double radius, double away, double half)
    {
        double longer = half - (Math.Sqrt((away * away) + (radius * radius)) - away);
        return longer > 0.0 && longer < radius ? ((radius * radius) - (longer * longer)) / (2.0 * longer) : null;
    }

    // Each opening sends a wave from its inner edge and one, turned over, from its outer one, e^{−jkΔ}, Δ what the way by it is longer [BornWolf1999] § 8.2.
    private static double Gain(Scene scene, IReadOnlyList<(double Inner, double Outer)> rings, double away, Setting setting, double wavelength)
    {
        Complex sum = Complex.Zero;
        double behind = setting.At;
        foreach ((double inner, double outer) in rings)
        {
            double middle = Math.Sqrt(0.5 * ((inner * inner) + (outer * outer)));
            double lit = Lit(scene, setting.Source.Antenna, Math.Atan2(middle, away)) * Lit(scene, setting.Receiver.Antenna, Math.Atan2(middle, behind));
            sum += Math.Sqrt(lit) * (Edge(inner) - Edge(outer));
        }

        return Math.Pow(sum.Magnitude, 2.0);

        Complex Edge(double r) => Complex.Exp(new Complex(0.0, -Math.Tau * (Math.Sqrt((away * away) + (r * r)) - away + Math.Sqrt((behind * behind) + (r * r)) - behind) / wavelength));
    }

    // Power off the axis over that on it, as the mean of its two planes.
    private static double Lit(Scene scene, string antenna, double angle)
    {
        (double sin, double cos) = Math.SinCos(angle);
        double off = scene.Antenna(antenna).DirectivityTowards(new Vector(cos, sin, 0.0)) + scene.Antenna(antenna).DirectivityTowards(new Vector(cos, 0.0, sin));
        return 0.5 * off / scene.Antenna(antenna).DirectivityTowards(Vector.UnitX);
    }

    private static double? At(double[] places, double[] values, double place) =>
        place >= places.Min() && place <= places.Max() ? MathNet.Numerics.Interpolate.Linear(places, values).Interpolate(place) : null;
}
