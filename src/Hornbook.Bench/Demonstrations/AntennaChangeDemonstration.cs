using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;

namespace Hornbook.Bench.Demonstrations;

/// <summary>Gain: the antenna of one end is changed for another, the mouth kept in place.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Changed">Which end.</param>
/// <param name="Antennas">Names of the antennas, in the order shown; ≥ 2.</param>
public sealed record AntennaChangeDemonstration(string Name, BenchEnd Changed, IReadOnlyList<string> Antennas) : Demonstration(Name)
{
    /// <summary>Whether the same antennas are changed in the same order.</summary>
    public bool Equals(AntennaChangeDemonstration? other) => base.Equals(other) && Changed == other.Changed && Antennas.SequenceEqual(other.Antennas);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(base.GetHashCode(), Changed, Antennas.Count);

    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Antenna;

    /// <inheritdoc/>
    public override string Act => Changed == BenchEnd.Source ? "the source's antenna is changed" : "the receiver's antenna is changed";

    /// <inheritdoc/>
    public override bool NeedsFarZone => true;

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. Antennas.Select((name, i) => With(plan, name, i + 1))];
    }

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => AntennaChangeLesson.Of();

    internal override Evaluation Evaluate(Scene scene, Curve curve) => AntennaChangeEvaluation.Of(scene, this, curve);

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation) => Hearing.AntennaChange(curve);

    private Setting With(BenchPlan plan, string antenna, int order) => Changed == BenchEnd.Source
        ? new(order, antenna, plan.Source with { Antenna = antenna }, plan.Receiver, plan.Panels)
        : new(order, antenna, plan.Source, plan.Receiver with { Antenna = antenna }, plan.Panels);
}
