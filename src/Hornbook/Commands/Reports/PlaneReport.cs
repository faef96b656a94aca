using Hornbook.Physics;
using Hornbook.Physics.Antennas;

namespace Hornbook.Commands.Reports;

/// <summary>The beam of an antenna in one plane.</summary>
internal sealed record PlaneReport
{
    public required PatternPlane Plane { get; init; }

    public required double? HalfPowerWidthDeg { get; init; }

    public required double? TenDbWidthDeg { get; init; }

    public required double? FirstMinimumDeg { get; init; }

    public required double? FirstMinimumDb { get; init; }

    public required double? SideLobeDeg { get; init; }

    public required double? SideLobeDb { get; init; }

    /// <summary>Strongest crossed field within the trusted angle, over the axis.</summary>
    public required double CrossedFieldDb { get; init; }

    /// <summary>Positive behind the mouth.</summary>
    public required double PhaseCentreBehindMouthM { get; init; }

    internal static PlaneReport Of(Antenna antenna, PatternPlane plane)
    {
        BeamShape beam = BeamShape.Of(antenna, plane);
        return new PlaneReport
        {
            Plane = plane,
            HalfPowerWidthDeg = Degrees(beam.HalfPowerWidth),
            TenDbWidthDeg = Degrees(beam.TenDbWidth),
            FirstMinimumDeg = Degrees(beam.FirstMinimum?.Angle),
            FirstMinimumDb = Db(beam.FirstMinimum?.Level),
            SideLobeDeg = Degrees(beam.SideLobe?.Angle),
            SideLobeDb = Db(beam.SideLobe?.Level),
            CrossedFieldDb = Decibels.FromRatio(CrossedField.Strongest(antenna, plane)),
            PhaseCentreBehindMouthM = PhaseCentre.BehindMouth(antenna, plane),
        };
    }

    private static double? Degrees(double? angle) => angle * 180.0 / Math.PI;

    private static double? Db(double? ratio) => ratio is null ? null : Decibels.FromRatio(ratio.Value);
}
