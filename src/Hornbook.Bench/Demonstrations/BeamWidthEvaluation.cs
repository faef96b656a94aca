using Hornbook.Bench.Readings;
using Hornbook.Physics.Antennas;

namespace Hornbook.Bench.Demonstrations;

/// <summary>The beam width that the bench will show.</summary>
/// <param name="Turned">Which end turns: it is that end's pattern which is measured.</param>
/// <param name="Antenna">The antenna that turns.</param>
/// <param name="PeakAt">Angle off the present direction at which most is received [rad].</param>
/// <param name="HalfPowerWidth">Full angle between the half-power points of the curve [rad]; null where the curve does not reach both.</param>
/// <param name="OwnHalfPowerWidth">The antenna's own far half-power width in the plane of turning [rad]; null where that plane is none of its principal ones.</param>
/// <param name="HandbookWidth">What a handbook's rule would say [rad]; null as above.</param>
public sealed record BeamWidthEvaluation(
    BenchEnd Turned, string Antenna, double PeakAt, double? HalfPowerWidth, double? OwnHalfPowerWidth, double? HandbookWidth) : Evaluation
{
    internal static BeamWidthEvaluation Of(Scene scene, BeamWidthDemonstration demonstration, Curve curve)
    {
        bool source = demonstration.Turned == BenchEnd.Source;
        string antenna = source ? scene.Plan.Source.Antenna : scene.Plan.Receiver.Antenna;
        PatternPlane? plane = TurningPlane.Of(source ? scene.Plan.Source.Pose : scene.Plan.Receiver.Pose);
        HalfPower read = HalfPower.Of(curve.Positions, curve.Links);
        return new BeamWidthEvaluation(
            demonstration.Turned,
            antenna,
            read.PeakAt,
            read.Width,
            plane is PatternPlane own ? BeamShape.Of(scene.Antenna(antenna), own).HalfPowerWidth : null,
            plane is PatternPlane rule ? HandbookBeamWidth.Of(scene.Antenna(antenna), rule) : null);
    }
}
