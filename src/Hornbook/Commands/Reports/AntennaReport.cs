using Hornbook.Commands.Printing;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Antennas.ClosedForm;
using Hornbook.Physics.Guides;

namespace Hornbook.Commands.Reports;

/// <summary>An antenna's numbers at a frequency.</summary>
internal sealed record AntennaReport : IReport
{
    private static readonly double[] NearDistances = [0.1, 0.2, 0.3, 0.5, 0.7, 1.0, 1.5, 2.0];

    public required string Name { get; init; }

    public required string Guide { get; init; }

    public required string Walls { get; init; }

    public required double FrequencyHz { get; init; }

    public required double WavelengthM { get; init; }

    public required double MouthWidthM { get; init; }

    public required double MouthHeightM { get; init; }

    /// <summary>Throat to mouth; null for an open guide.</summary>
    public required double? LengthM { get; init; }

    /// <summary>Normalised to the power radiated.</summary>
    public required double DirectivityDbi { get; init; }

    /// <summary>Normalised to the power through the mouth, as the closed Fresnel-integral form is.</summary>
    public required double MouthNormDirectivityDbi { get; init; }

    /// <summary>The closed form: Fresnel integrals for a horn, a mouth in phase for an open guide; mouth norm.</summary>
    public required double ClosedFormDirectivityDbi { get; init; }

    /// <summary>With the loss in the walls, without the antenna's own reflection.</summary>
    public required double GainDbi { get; init; }

    /// <summary>With both: what counts on the bench.</summary>
    public required double RealisedGainDbi { get; init; }

    public required double OhmicDb { get; init; }

    public required double MismatchDb { get; init; }

    public required double ReflectionRatio { get; init; }

    public required double ApertureEfficiencyRatio { get; init; }

    /// <summary>2D²/λ with the larger side of the mouth.</summary>
    public required double FarDistanceM { get; init; }

    /// <summary>Directions farther off the axis are not to be trusted.</summary>
    public required double TrustedToDeg { get; init; }

    public required IReadOnlyList<PlaneReport> Planes { get; init; }

    /// <summary>Gain that a small probe on the axis finds at a distance from the mouth.</summary>
    public required IReadOnlyList<NearGainReport> NearGains { get; init; }

    /// <summary>What it costs when the horn is not made exactly; null for an open guide.</summary>
    public required BuildErrorReport? BuildErrors { get; init; }

    internal static AntennaReport Of(string name, Antenna antenna, double tolerance) => new()
    {
        Name = name,
        Guide = StandardGuides.Matching(antenna.Shape.Guide)?.Name
            ?? $"{Show.Length(antenna.Shape.Guide.Width)} x {Show.Length(antenna.Shape.Guide.Height)}",
        Walls = antenna.Shape.Walls.Name,
        FrequencyHz = antenna.Frequency,
        WavelengthM = antenna.Wavelength,
        MouthWidthM = antenna.Shape.MouthWidth,
        MouthHeightM = antenna.Shape.MouthHeight,
        LengthM = (antenna.Shape as Horn)?.Length,
        DirectivityDbi = Decibels.FromRatio(antenna.Directivity),
        MouthNormDirectivityDbi = Decibels.FromRatio(antenna.MouthNormDirectivity),
        ClosedFormDirectivityDbi = Decibels.FromRatio(ClosedForm(antenna)),
        GainDbi = Decibels.FromRatio(antenna.Gain),
        RealisedGainDbi = Decibels.FromRatio(antenna.RealisedGain),
        OhmicDb = Decibels.FromRatio(antenna.OhmicEfficiency),
        MismatchDb = Decibels.FromRatio(antenna.MismatchEfficiency),
        ReflectionRatio = antenna.Reflection,
        ApertureEfficiencyRatio = antenna.ApertureEfficiency,
        FarDistanceM = antenna.FarDistance,
        TrustedToDeg = FarPattern.TrustedAngle * 180.0 / Math.PI,
        Planes = [.. Enum.GetValues<PatternPlane>().Select(plane => PlaneReport.Of(antenna, plane))],
        NearGains = [.. NearDistances.Select(distance => NearGainReport.Of(antenna, distance))],
        BuildErrors = antenna.Shape is Horn built ? BuildErrorReport.Of(built, antenna.Frequency, tolerance) : null,
    };

    /// <inheritdoc/>
    public void Describe(TextPage page)
    {
        page.Heading($"{Name} at {Show.Gigahertz(FrequencyHz)}");
        page.Gap();
        page.Table(Numbers());
        page.Heading("Beam");
        page.Table(Beam());
        page.Paragraph("Widths are full angles, first minimum and side lobe are beside the beam; crossed: strongest crossed field.");
        page.Paragraph($"Beyond {TrustedToDeg:F0} deg off the axis the outside of the walls decides, which is left out: do not trust the pattern there.");
        page.Heading("Gain found on the axis close by");
        page.Table(NearTable());
        BuildErrors?.Describe(page);
    }

    private static double ClosedForm(Antenna antenna) => antenna.Shape is Horn horn
        ? FlaredMouth.Of(horn).Directivity(antenna.Wavelength)
        : OpenGuideEstimates.InPhaseGain(antenna.Shape.Guide, antenna.Frequency);

    private TextTable Numbers()
    {
        TextTable table = new(string.Empty, string.Empty, string.Empty);
        string length = LengthM is { } l ? $", {Show.Millimetres(l)} long" : ", cut square";
        table.Row("Mouth", $"{Show.Fixed(MouthWidthM * 1e3, 1)} x {Show.Millimetres(MouthHeightM)}", $"wide (H plane) x high (E plane){length}, on {Guide}, {Walls}");
        table.Row("Gain", Show.FineDb(GainDbi, "dBi"), "walls' loss included, reflection not");
        table.Row("  realised", Show.FineDb(RealisedGainDbi, "dBi"), "its own reflection included: what counts on the bench");
        table.Row("Directivity", Show.FineDb(DirectivityDbi, "dBi"), "of the power that is radiated");
        table.Row("  mouth norm", Show.FineDb(MouthNormDirectivityDbi, "dBi"), "of the power through the mouth, exact spherical phase");
        table.Row("  closed form", Show.FineDb(ClosedFormDirectivityDbi, "dBi"), "of the power through the mouth, quadratic phase");
        table.Row("Walls", Show.FineDb(OhmicDb), "lost in them");
        table.Row("Reflection", Show.FineDb(MismatchDb), $"|Γ| = {Show.Fixed(ReflectionRatio, 2)}");
        table.Row("Aperture", Show.Fixed(100.0 * ApertureEfficiencyRatio, 0, "%"), "of the mouth's area is effective");
        table.Row("Far zone", Show.Length(FarDistanceM), "2D²/λ, D the larger side of the mouth");
        return table;
    }

    private TextTable Beam()
    {
        TextTable table = new("plane", ">half power", ">10 dB down", ">1st minimum", ">side lobe", ">crossed", ">phase centre behind");
        foreach (PlaneReport plane in Planes)
        {
            table.Row(
                Word(plane.Plane), Angle(plane.HalfPowerWidthDeg), Angle(plane.TenDbWidthDeg), Angle(plane.FirstMinimumDeg),
                plane.SideLobeDb is { } lobe ? Show.Db(lobe) : "none", plane.CrossedFieldDb < -60.0 ? "none" : Show.Db(plane.CrossedFieldDb),
                Show.Length(plane.PhaseCentreBehindMouthM));
        }

        return table;
    }

    private TextTable NearTable()
    {
        TextTable table = new([">at", .. NearGains.Select(n => ">" + Show.Fixed(n.DistanceM * 100.0, 0, "cm"))]);
        table.Row(["dBi", .. NearGains.Select(n => Show.Fixed(n.GainDbi, 1))]);
        return table;
    }

    private static string Word(PatternPlane plane) => plane switch
    {
        PatternPlane.Electric => "E",
        PatternPlane.Magnetic => "H",
        _ => "45°",
    };

    private static string Angle(double? degrees) => degrees is { } d ? Show.Fixed(d, 1, "deg") : "none";
}
