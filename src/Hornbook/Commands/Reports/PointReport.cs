using System.Text.Json.Serialization;
using Hornbook.Bench.Demonstrations;
using Hornbook.Commands.Printing;

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
    public double? SwingDeg { get; } = changed == Abscissa.Swing ? changed.Shown(point.Setting.At) : null;

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? ShiftM { get; } = changed == Abscissa.Shift ? point.Setting.At : null;

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? FromPanelM { get; } = changed == Abscissa.FromPanel ? point.Setting.At : null;

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Antenna { get; } = changed == Abscissa.Antenna ? point.Setting.Label : null;

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Panel { get; } = changed == Abscissa.Panel ? point.Setting.Label : null;

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? GapM { get; } = changed == Abscissa.Gap ? point.Setting.At : null;

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? IncidenceDeg { get; } = changed == Abscissa.Incidence ? changed.Shown(point.Setting.At) : null;

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Held { get; } = changed == Abscissa.Held ? point.Setting.Label : null;

    /// <summary>What is set, as people read it: a number in the unit of the abscissa, or a name.</summary>
    internal string At { get; } = changed.Unit.Length > 0 ? Show.Fixed(changed.Shown(point.Setting.At), 1) : point.Setting.Label;

    /// <summary>Tone where the standing waves between the mouths take away the most.</summary>
    public double LowestToneHz { get; } = Math.Min(point.Lower.Tone, point.Upper.Tone);

    /// <summary>Tone where they add the most.</summary>
    public double HighestToneHz { get; } = Math.Max(point.Lower.Tone, point.Upper.Tone);
}
