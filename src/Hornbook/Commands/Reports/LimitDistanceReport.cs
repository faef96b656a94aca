using Hornbook.Physics.Exposure;

namespace Hornbook.Commands.Reports;

/// <summary>A published exposure limit and how far it keeps people from this source.</summary>
internal sealed record LimitDistanceReport
{
    public required string Id { get; init; }

    public required string Title { get; init; }

    public required string Instrument { get; init; }

    public required ExposureGroup Group { get; init; }

    public required LimitScope Scope { get; init; }

    public required double LimitWPerM2 { get; init; }

    /// <summary>The same as rms electric field of a plane wave.</summary>
    public required double LimitVPerM { get; init; }

    /// <summary>Time over which it may be averaged; 0 where it holds at every moment.</summary>
    public required double AveragingTimeS { get; init; }

    /// <summary>Area over which it may be averaged; null where it is for the whole body.</summary>
    public required double? AveragingAreaM2 { get; init; }

    public required bool InForce { get; init; }

    public required string? ReplacedBy { get; init; }

    public required string Origin { get; init; }

    public required string Remarks { get; init; }

    /// <summary>From the mouth's centre along the axis; 0 where the limit is met nowhere.</summary>
    public required double KeepOutOnAxisM { get; init; }

    /// <summary>The largest in any direction.</summary>
    public required double KeepOutAnywhereM { get; init; }

    internal static LimitDistanceReport Of(LimitDistance distance, double frequency)
    {
        ExposureLimit limit = distance.Limit;
        return new LimitDistanceReport
        {
            Id = limit.Id,
            Title = limit.Title,
            Instrument = limit.Instrument,
            Group = limit.Group,
            Scope = limit.Scope,
            LimitWPerM2 = distance.Density,
            LimitVPerM = limit.FieldStrength(frequency),
            AveragingTimeS = limit.AveragingTime(frequency),
            AveragingAreaM2 = limit.AveragingArea,
            InForce = limit.IsInForce,
            ReplacedBy = limit.ReplacedBy,
            Origin = limit.Origin,
            Remarks = limit.Remarks,
            KeepOutOnAxisM = distance.OnAxis,
            KeepOutAnywhereM = distance.Anywhere,
        };
    }
}
