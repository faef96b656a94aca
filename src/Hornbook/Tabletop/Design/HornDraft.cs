using Hornbook.Physics;
using Hornbook.Physics.Antennas.Choosing;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;

namespace Hornbook.Tabletop.Design;

/// <summary>What a horn is wished by.</summary>
public enum HornAim
{
    /// <summary>Its gain.</summary>
    Gain,

    /// <summary>The widths of its beam.</summary>
    Beam,

    /// <summary>The sheet of metal at hand.</summary>
    Sheet,
}

/// <summary>A wish for a horn as it is typed, in the units of its form.</summary>
public sealed record HornDraft
{
    private const double Degree = Math.PI / 180.0;
    private const double Millimetre = 1e-3;
    private const double Centimetre = 1e-2;

    public HornAim Aim { get; init; } = HornAim.Gain;

    public double GainDbi { get; init; } = 17.0;

    public double BeamEDeg { get; init; } = 22.0;

    public double BeamHDeg { get; init; } = 24.0;

    public double SheetWidthCm { get; init; } = 30.0;

    public double SheetLengthCm { get; init; } = 40.0;

    public double SeamMm { get; init; } = 6.0;

    /// <summary>No horn longer than this is offered.</summary>
    public double LongestCm { get; init; } = 30.0;

    /// <summary>Sizes are whole steps of this.</summary>
    public double StepMm { get; init; } = 0.5;

    /// <summary>Standard name of the guide that the horn joins.</summary>
    public string Guide { get; init; } = "WR-90";

    /// <summary>Name of its metal.</summary>
    public string Metal { get; init; } = "brass";

    /// <summary>What it is for.</summary>
    /// <param name="frequency">Of the bench [Hz]; the guide carries it.</param>
    public Feed Feed(double frequency) => new(StandardGuides.Find(Guide)!.Guide, frequency, Conductors.Find(Metal)!);

    /// <summary>The guides that carry a frequency with one mode only, by name.</summary>
    public static IReadOnlyList<string> Guides(double frequency)
    {
        string[] meant = [.. StandardGuides.For(frequency).Select(size => size.Name)];
        return meant.Length > 0 ? meant : [.. StandardGuides.All.Where(size => size.Guide.CutoffFrequency < frequency).Select(size => size.Name).TakeLast(1)];
    }

    /// <summary>The horn for the wish.</summary>
    public HornChoice Granted(Feed feed) => Aim switch
    {
        HornAim.Gain => HornWish.ForGain(feed, Decibels.ToRatio(GainDbi)),
        HornAim.Beam => HornWish.ForBeam(feed, BeamEDeg * Degree, BeamHDeg * Degree),
        _ => HornWish.FromSheet(feed, new MetalSheet(SheetWidthCm * Centimetre, SheetLengthCm * Centimetre, SeamMm * Millimetre)),
    };

    /// <summary>The longest that is offered [m].</summary>
    public double Longest => LongestCm * Centimetre;

    /// <summary>The step [m].</summary>
    public double Step => StepMm * Millimetre;
}
