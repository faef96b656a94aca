using System.Globalization;
using Hornbook.Physics.Guides;

namespace Hornbook.Physics.Exposure;

/// <summary>A published limit of power density in a range of frequencies.</summary>
/// <remarks>A limit is a date and a country: local rules decide, and the text in force is to be read before relying on one.</remarks>
public sealed class ExposureLimit
{
    private readonly Func<double, double> _density;
    private readonly Func<double, double> _averagingTime;

    internal ExposureLimit(string id, string title, FrequencyBand band, Func<double, double> density, Func<double, double> averagingTime)
    {
        Id = id;
        Title = title;
        Band = band;
        _density = density;
        _averagingTime = averagingTime;
    }

    /// <summary>A plain name for files and commands, unique: "icnirp-2020-local-public".</summary>
    public string Id { get; }

    /// <summary>Its name for people.</summary>
    public string Title { get; }

    /// <summary>The instrument and its date.</summary>
    public required string Instrument { get; init; }

    /// <summary>Whom it protects.</summary>
    public required ExposureGroup Group { get; init; }

    /// <summary>Frequencies for which it is kept here, both ends included.</summary>
    public FrequencyBand Band { get; }

    /// <summary>What kind of source it is written for.</summary>
    public LimitScope Scope { get; init; } = LimitScope.AnySource;

    /// <summary>Area over which it may be averaged [m²]; null where the instrument takes the whole body or names none.</summary>
    public double? AveragingArea { get; init; }

    /// <summary>Whether it is in force (for guidelines and standards: the current edition).</summary>
    public bool IsInForce => ReplacedBy is null;

    /// <summary>What replaced it, and when; null while it is in force.</summary>
    public string? ReplacedBy { get; init; }

    /// <summary>Where the numbers come from: read in a copy of the text, or from memory.</summary>
    public required string Origin { get; init; }

    /// <summary>What else must be said; empty where nothing.</summary>
    public string Remarks { get; init; } = string.Empty;

    /// <summary>The limit at a frequency [Hz], as equivalent plane-wave power density [W/m²].</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is outside <see cref="Band"/>.</exception>
    public double PowerDensity(double frequency) => _density(InBand(frequency));

    /// <summary>The limit at a frequency [Hz] as rms electric field of a plane wave, √(ηS) [V/m].</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is outside <see cref="Band"/>.</exception>
    public double FieldStrength(double frequency) => Math.Sqrt(Constants.VacuumImpedance * PowerDensity(frequency));

    /// <summary>Time over which it may be averaged at a frequency [Hz], in seconds; 0 where it holds at every moment.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is outside <see cref="Band"/>.</exception>
    public double AveragingTime(double frequency) => _averagingTime(InBand(frequency));

    private double InBand(double frequency) => Band.Contains(frequency)
        ? frequency
        : throw new ArgumentOutOfRangeException(nameof(frequency), frequency, string.Create(
            CultureInfo.InvariantCulture, $"frequency = {frequency} Hz; {Id} is kept for {Band.Lowest} to {Band.Highest} Hz"));
}
