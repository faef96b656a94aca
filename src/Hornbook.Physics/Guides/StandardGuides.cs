namespace Hornbook.Physics.Guides;

/// <summary>The standard rectangular guides from 2.6 to 40 GHz that a bench meets.</summary>
public static class StandardGuides
{
    private const double Inch = 25.4e-3;

    /// <summary>Two guides closer than this are the same size: millimetre tables are rounded to a hundredth [m].</summary>
    private const double SameSize = 0.02e-3;

    /// <summary>All of them, from the largest to the smallest.</summary>
    public static IReadOnlyList<StandardGuide> All { get; } =
    [
        Size("WR-284", "R32", 2.840, 1.340, 2.60, 3.95),
        Size("WR-229", "R40", 2.290, 1.145, 3.30, 4.90),
        Size("WR-187", "R48", 1.872, 0.872, 3.95, 5.85),
        Size("WR-137", "R70", 1.372, 0.622, 5.85, 8.20),
        Size("WR-112", "R84", 1.122, 0.497, 7.05, 10.0),
        Size("WR-90", "R100", 0.900, 0.400, 8.20, 12.4),
        Size("WR-75", "R120", 0.750, 0.375, 10.0, 15.0),
        Size("WR-62", "R140", 0.622, 0.311, 12.4, 18.0),
        Size("WR-51", "R180", 0.510, 0.255, 15.0, 22.0),
        Size("WR-42", "R220", 0.420, 0.170, 18.0, 26.5),
        Size("WR-28", "R320", 0.280, 0.140, 26.5, 40.0),
    ];

    /// <summary>A standard guide by its EIA or IEC name; case, blanks and hyphens do not matter ("WR-90", "wr90", "R 100").</summary>
    /// <returns>The guide, or null where the name is not known.</returns>
    public static StandardGuide? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string plain = Plain(name);
        return All.FirstOrDefault(size => Plain(size.Name) == plain || Plain(size.IecName) == plain);
    }

    /// <summary>The standard size that a guide has, within 0.02 mm in both dimensions; null where it has none.</summary>
    public static StandardGuide? Matching(RectangularGuide guide)
    {
        ArgumentNullException.ThrowIfNull(guide);
        return All.FirstOrDefault(size =>
            Math.Abs(size.Guide.Width - guide.Width) <= SameSize && Math.Abs(size.Guide.Height - guide.Height) <= SameSize);
    }

    /// <summary>The standard guides whose recommended band contains a frequency [Hz], from the largest to the smallest.</summary>
    public static IReadOnlyList<StandardGuide> For(double frequency) => [.. All.Where(size => size.RecommendedBand.Contains(frequency))];

    /// <summary>Where an air-filled guide is meant to be used.</summary>
    /// <returns>
    /// The standard's band for a standard size; for any other, 1.25 f_c to 0.95 times the cut-off of the next mode
    /// (common practice, no source; the eleven standard bands begin at 1.25 to 1.36 f_c and end at 1.86 to 1.91 f_c).
    /// </returns>
    public static FrequencyBand RecommendedBand(RectangularGuide guide) =>
        Matching(guide)?.RecommendedBand ?? ByRule(GuideModes.First(guide, 2));

    private static FrequencyBand ByRule(IReadOnlyList<GuideMode> modes)
    {
        double lowest = 1.25 * modes[0].CutoffFrequency;
        return new FrequencyBand(lowest, Math.Max(lowest, 0.95 * modes[1].CutoffFrequency));
    }

    private static StandardGuide Size(string name, string iecName, double widthInches, double heightInches, double lowestGhz, double highestGhz) =>
        new(name, iecName, new RectangularGuide(widthInches * Inch, heightInches * Inch), new FrequencyBand(lowestGhz * 1e9, highestGhz * 1e9));

    private static string Plain(string name) =>
        new([.. name.Where(char.IsLetterOrDigit).Select(char.ToUpperInvariant)]);
}
