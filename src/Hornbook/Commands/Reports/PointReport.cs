using System.Text.Json.Serialization;
using Hornbook.Bench.Demonstrations;

namespace Hornbook.Commands.Reports;

/// <summary>One point of a predicted curve: what is set, in the one key that fits, and what is then read.</summary>
internal sealed class PointReport(Abscissa changed, CurvePoint point) : ReadingReport(point.Reading)
{
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? TurnDeg { get; } = changed == Abscissa.Turn ? changed.Shown(point.Setting.At) : null;

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? RollDeg { get; } = changed == Abscissa.Roll ? changed.Shown(point.Setting.At) : null;

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? DistanceM { get; } = changed == Abscissa.Distance ? point.Setting.At : null;

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Antenna { get; } = changed == Abscissa.Antenna ? point.Setting.Label : null;

    /// <summary>Tone where the standing waves between the mouths take away the most.</summary>
    public double LowestToneHz { get; } = Math.Min(point.Lower.Tone, point.Upper.Tone);

    /// <summary>Tone where they add the most.</summary>
    public double HighestToneHz { get; } = Math.Max(point.Lower.Tone, point.Upper.Tone);
}
