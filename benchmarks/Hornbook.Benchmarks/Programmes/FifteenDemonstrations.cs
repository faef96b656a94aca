using System.Text.RegularExpressions;
using Hornbook.Bench.Files;
using Hornbook.Bench.Layout;

namespace Hornbook.Benchmarks.Programmes;

/// <summary>The example bench with panels, with fifteen demonstrations of 181 points.</summary>
internal static partial class FifteenDemonstrations
{
    private const string Points = "points = 181";

    // One of every kind with panels that the example leaves out, and a beam width.
    private const string More = """


        [[demonstrations]]
        kind = "beam width"
        name = "beam-width"
        end = "source"
        from = "-60 deg"
        to = "60 deg"
        points = 181

        [[demonstrations]]
        kind = "zone plate"
        name = "zone-plate"
        panel = "zones"
        from = "30 cm"
        to = "75 cm"
        points = 181

        [[demonstrations]]
        kind = "dish"
        name = "dish-focus"
        panel = "dish"
        from = "8 cm"
        to = "20 cm"
        points = 181

        [[demonstrations]]
        kind = "brewster angle"
        name = "brewster"
        panel = "acrylic"
        from = "35 deg"
        to = "75 deg"
        points = 181

        [[demonstrations]]
        kind = "half mirrors"
        name = "interferometer"
        first = "half-mirror-1"
        second = "half-mirror-2"
        from = "0 mm"
        to = "45 mm"
        points = 181

        [[demonstrations]]
        kind = "circular polarisation"
        name = "circular"
        grid = "grid"
        mirror = "plate"
        gap = "11.4 mm"
        from = "0 deg"
        to = "180 deg"
        points = 181

        [[demonstrations]]
        kind = "grid gap"
        name = "twist"
        grid = "grid"
        mirror = "plate"
        from = "4 mm"
        to = "17 mm"
        points = 181

        """;

    /// <summary>Reads the bench. Its two demonstrations that only compare a few things have no 181 points and are left out.</summary>
    internal static BenchPlan Read(string path)
    {
        string text = PointsLine().Replace(File.ReadAllText(path), Points) + More.ReplaceLineEndings("\n");
        BenchFile file = BenchFile.Parse(text, Path.GetFileName(path));
        BenchPlan plan = file.Plan ?? throw new InvalidOperationException(string.Join('\n', file.Problems));
        return plan with { Demonstrations = [.. plan.Demonstrations.Where(shown => shown.Course(plan).Count == 181)] };
    }

    [GeneratedRegex("^points = \\d+", RegexOptions.Multiline)]
    private static partial Regex PointsLine();
}
