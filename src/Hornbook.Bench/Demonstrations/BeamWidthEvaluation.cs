namespace Hornbook.Bench.Demonstrations;

/// <summary>The beam width that the bench will show.</summary>
/// <param name="Turned">Which end turns: it is that end's pattern which is measured.</param>
/// <param name="Antenna">The antenna that turns.</param>
/// <param name="PeakAt">Angle off the present direction at which most is received [rad].</param>
/// <param name="HalfPowerWidth">Full angle between the half-power points of the curve [rad]; null where the curve does not reach both.</param>
/// <param name="OwnHalfPowerWidth">The antenna's own far half-power width in the plane of turning [rad]; null where that plane is none of its principal ones.</param>
/// <param name="HandbookWidth">What a handbook's rule would say [rad]; null as above.</param>
public sealed record BeamWidthEvaluation(
    BenchEnd Turned, string Antenna, double PeakAt, double? HalfPowerWidth, double? OwnHalfPowerWidth, double? HandbookWidth) : Evaluation;
