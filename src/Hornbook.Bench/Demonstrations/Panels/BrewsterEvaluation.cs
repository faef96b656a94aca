using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Sheets;
using Complex = System.Numerics.Complex;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>Brewster's angle as a curve shows it, beside tan θ = √ε′ and beside an endless sheet of the same thickness.</summary>
internal static class BrewsterEvaluation
{
    // So far below the weaker end of the curve the flanks are compared; a plane wave then gives the angle to half a degree [dB].
    private const double FlankDb = 10.0;

    internal static LawEvaluation Of(Scene scene, BrewsterDemonstration demonstration, Curve curve)
    {
        double[] levels = [.. curve.Links.Select(link => Decibels.FromRatio(Math.Max(link, double.Epsilon)))];
        double? softest = Middle(curve.Positions, levels);
        BenchPanel sheet = scene.Plan.Panels.Named(demonstration.Sheet);
        double? permittivity = Permittivity(sheet, scene.Plan.Frequency);
        double[] returned = [.. curve.Points.Select(point => Returned(scene, point.Setting, demonstration.Sheet))];
        double tie = curve.Strongest.Reading.Link / Returned(scene, curve.Strongest.Setting, demonstration.Sheet);
        return new LawEvaluation(
        [
            new("softest at", ComparedQuantity.Angle, softest is { } angle ? Math.Abs(angle) : null, permittivity is { } e ? Math.Atan(Math.Sqrt(e)) : null, "middle between equal tones on either side; Brewster's angle, tan θ = √ε′, whatever the thickness"),
            new("depth", ComparedQuantity.Level, TextbookComparison.ErrorDb(curve.Strongest.Reading.Link, curve.Weakest.Reading.Link), TextbookComparison.ErrorDb(returned.Max(), returned.Min()),
                "strongest over weakest; books have an endless sheet and a plane wave"),
            new("fields upright", ComparedQuantity.Level, UprightDb(scene, demonstration, curve.Weakest), null, "gained at the softest by rolling both ends by 90°: no such angle is there"),
            new("thickness", ComparedQuantity.Length, sheet.Panel.Sheet.Thickness, permittivity is { } own ? BestThickness(own, scene.Plan.Frequency) : null, "a quarter wave inside, where both faces add; at twice that all angles are soft"),
        ])
        {
            Law = [.. returned.Select(share => share * tie)],
            LawName = "what an endless sheet returns of a plane wave",
        };
    }

    // Near the angle a trace of other ways draws dips of its own, so it is found as by ear: the middle between two equal tones on either side.
    private static double? Middle(double[] at, double[] levels)
    {
        (double[] ordered, double[] heights) = ([.. at], [.. levels]);
        Array.Sort(ordered, heights);
        int deepest = Array.IndexOf(heights, heights.Min());
        double end = Math.Min(heights[0], heights[^1]);
        double flank = end - Math.Min(FlankDb, 0.5 * (end - heights[deepest]));
        return deepest == 0 || deepest == heights.Length - 1
            ? null
            : 0.5 * (Crossing(ordered, heights, flank, deepest, -1) + Crossing(ordered, heights, flank, deepest, 1));
    }

    private static double Crossing(double[] at, double[] levels, double level, int from, int step)
    {
        int i = from;
        while (levels[i] < level)
        {
            i += step;
        }

        double share = i == from ? 0.0 : (level - levels[i - step]) / (levels[i] - levels[i - step]);
        return at[i] - (i == from ? 0.0 : (1.0 - share) * (at[i] - at[i - step]));
    }

    // Books have one layer; a stack or a grid has no angle of its own.
    private static double? Permittivity(BenchPanel panel, double frequency) => panel.Panel.Sheet is LayeredSheet { Layers.Count: 1 } sheet
        ? sheet.Layers[0].Material.RelativePermittivity(frequency).Real
        : null;

    // λ √(1 + ε′) / 4ε′: a quarter wave between the faces at Brewster's angle, where the normal part of the wave number is k ε′/√(1 + ε′).
    private static double BestThickness(double permittivity, double frequency) =>
        FreeSpace.Wavelength(frequency) * Math.Sqrt(1.0 + permittivity) / (4.0 * permittivity);

    private static double UprightDb(Scene scene, BrewsterDemonstration demonstration, CurvePoint softest)
    {
        Setting upright = demonstration.At(scene.Plan, softest.Setting.At, 0.0);
        return TextbookComparison.ErrorDb(scene.Read(upright.Source, upright.Receiver, upright.Panels).Link, softest.Reading.Link);
    }

    private static double Returned(Scene scene, Setting setting, string sheet)
    {
        Complex share = PlaneWave.Kept(scene.Plan.Frequency, setting.Source.Pose, setting.Panels.Named(sheet)).Returned;
        return (share.Real * share.Real) + (share.Imaginary * share.Imaginary);
    }
}
