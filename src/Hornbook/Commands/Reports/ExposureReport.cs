using Hornbook.Bench.Readings;
using Hornbook.Commands.Printing;
using Hornbook.Physics.Exposure;

namespace Hornbook.Commands.Reports;

/// <summary>How far to keep people from the source of a bench.</summary>
internal sealed record ExposureReport : IReport
{
    private static readonly double[] Distances = [0.1, 0.2, 0.3, 0.5, 0.7, 1.0, 1.5, 2.0];

    public required string Bench { get; init; }

    public required double FrequencyHz { get; init; }

    /// <summary>The most that the source can give.</summary>
    public required double WorstCasePowerW { get; init; }

    /// <summary>Equivalent isotropically radiated power at that.</summary>
    public required double EirpW { get; init; }

    /// <summary>The limit that was chosen.</summary>
    public required LimitDistanceReport Chosen { get; init; }

    /// <summary>Why that one.</summary>
    public required string ChosenBecause { get; init; }

    /// <summary>All that cover the frequency, the strictest first.</summary>
    public required IReadOnlyList<LimitDistanceReport> Limits { get; init; }

    public required MouthReport Mouth { get; init; }

    public required IReadOnlyList<DensityReport> OnAxis { get; init; }

    public required IReadOnlyList<string> Cautions { get; init; }

    public required string Licence { get; init; }

    internal static ExposureReport Of(Scene scene, ExposureField field, ExposureLimit chosen, string because) =>
        Of(scene, field, chosen, because, LimitDistances.Of(field, null, CancellationToken.None));

    internal static ExposureReport Of(Scene scene, ExposureField field, ExposureLimit chosen, string because, IReadOnlyList<LimitDistance> distances) => new()
    {
        Bench = scene.Plan.Title,
        FrequencyHz = scene.Plan.Frequency,
        WorstCasePowerW = scene.Plan.Source.WorstCasePower,
        EirpW = PowerDensity.EquivalentIsotropicPower(scene.Source, scene.Plan.Source.WorstCasePower),
        Chosen = LimitDistanceReport.Of(distances.First(d => d.Limit == chosen), scene.Plan.Frequency),
        ChosenBecause = because,
        Limits = [.. distances.Select(d => LimitDistanceReport.Of(d, scene.Plan.Frequency)).OrderBy(l => l.LimitWPerM2).ThenBy(l => l.Title, StringComparer.Ordinal)],
        Mouth = MouthReport.Of(field),
        OnAxis = [.. Distances.Select(d => DensityReport.Of(field, scene.Plan.Source.WorstCasePower, d))],
        Cautions = Physics.Exposure.Cautions.All,
        Licence = EmissionRules.Note,
    };

    /// <inheritdoc/>
    public void Describe(TextPage page)
    {
        page.Heading($"{Bench}, {Show.Gigahertz(FrequencyHz)}, at most {Show.Si(WorstCasePowerW, "W")} ({Show.Si(EirpW, "W")} e.i.r.p.)");
        page.Gap();
        string away = Chosen.KeepOutAnywhereM > 0.0 ? $"KEEP {Show.Length(Chosen.KeepOutAnywhereM)} AWAY from the mouth" : "NOWHERE ABOVE THE LIMIT";
        page.Paragraph($"{away}: {Density(Chosen.LimitWPerM2)} W/m², {Chosen.Title}, {ChosenBecause}.");
        page.Heading("All limits at this frequency, the strictest first");
        page.Table(LimitTable());
        page.Paragraph("* replaced or not for benches; --json has dates, instruments and origins.");
        page.Heading("At the mouth, for an eye or a hand");
        page.Paragraph($"{Density(Mouth.PeakWPerM2)} W/m² at the peak, {Density(Mouth.MeanOver4Cm2WPerM2)} W/m² in the mean over 4 cm²; the textbook's 4P/A is {Density(Mouth.TextbookWPerM2)} W/m².");
        page.Heading("On the axis");
        page.Table(AxisTable());
        page.Gap();
        foreach (string caution in Cautions.Append(Licence))
        {
            page.Paragraph($"- {caution}", 2);
        }
    }

    private TextTable LimitTable()
    {
        TextTable table = new(">[W/m²]", ">keep out", ">mean over", "for", "limit");
        foreach (LimitDistanceReport limit in Limits)
        {
            bool counts = limit.InForce && limit.Scope == LimitScope.AnySource;
            table.Row(
                Density(limit.LimitWPerM2), limit.KeepOutAnywhereM > 0.0 ? Show.Length(limit.KeepOutAnywhereM) : "nowhere", Time(limit.AveragingTimeS),
                limit.Group == ExposureGroup.Public ? "public" : "workers", limit.Title + (counts ? string.Empty : " *"));
        }

        return table;
    }

    private TextTable AxisTable()
    {
        TextTable table = new([">at", .. OnAxis.Select(d => ">" + Show.Fixed(d.DistanceM * 100.0, 0, "cm"))]);
        table.Row(["W/m²", .. OnAxis.Select(d => Density(d.DensityWPerM2))]);
        table.Row(["far formula", .. OnAxis.Select(d => Density(d.FarFormulaWPerM2))]);
        return table;
    }

    private static string Density(double density) => Show.Fixed(density, density < 1.0 ? 3 : 1);

    private static string Time(double seconds) => seconds switch
    {
        0.0 => "no mean",
        < 60.0 => Show.Fixed(seconds, 0, "s"),
        < 3600.0 => Show.Fixed(seconds / 60.0, 0, "min"),
        _ => Show.Fixed(seconds / 3600.0, 0, "h"),
    };
}
