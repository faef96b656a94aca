using Hornbook.Bench.Demonstrations;
using Hornbook.Tabletop.Rehearsing;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Tabletop.Rehearsing;

public sealed class RehearsalTests
{
    private static readonly Curve Polarisation = CurveOf("polarisation");
    private static readonly Curve Gain = CurveOf("gain");

    private static Curve CurveOf(string name) =>
        Curve.Of(ExampleBench.Scene, ExampleBench.Scene.Plan.Demonstrations.Single(shown => shown.Name == name), cancellation: CancellationToken.None);

    [Fact]
    public void Stands_at_the_beginning_until_it_is_played_and_runs_once_through()
    {
        Rehearsal still = new(Polarisation);
        Assert.Equal(0.0, still.Place(1000.0));
        Rehearsal running = still.Running(1000.0);
        Close.Absolute(0.5 * running.Last, running.Place(1000.0 + (0.5 * Rehearsal.WholeSweep)), 1e-9);
        Assert.False(running.IsOver(1000.0 + (0.99 * Rehearsal.WholeSweep)));
        Assert.True(running.IsOver(1000.0 + Rehearsal.WholeSweep));
        Assert.Equal(running.Last, running.Place(5000.0));
    }

    [Fact]
    public void Goes_on_from_where_it_was_held_and_from_the_beginning_after_its_end()
    {
        Rehearsal held = new Rehearsal(Polarisation).Running(0.0).Held(3.0);
        Assert.Equal(held.Place(3.0), held.Place(99.0));
        Assert.Equal(held.Place(3.0), held.Running(50.0).Place(50.0));
        Assert.Equal(0.0, held.PutTo(1e9).Running(0.0).Place(0.0));
    }

    [Fact]
    public void Sounds_like_the_curve_at_its_points_and_between_them_in_between()
    {
        Rehearsal at = new Rehearsal(Polarisation).PutTo(40.0);
        Assert.Equal(Polarisation.Points[40].Reading.Heard, at.Heard(0.0));
        double between = at.PutTo(40.5).Heard(0.0).Tone;

        // derived: half-way between two tones for the ear is their geometric mean
        Close.Relative(Math.Sqrt(Polarisation.Points[40].Reading.Heard.Tone * Polarisation.Points[41].Reading.Heard.Tone), between, 1e-12);
    }

    [Fact]
    public void Holds_each_thing_where_there_is_nothing_between_one_and_the_next()
    {
        Rehearsal running = new Rehearsal(Gain).Running(0.0);
        Assert.True(running.IsStepwise);
        Assert.Equal(Gain.Points[0], running.Nearest(1.9));
        Assert.Equal(Gain.Points[1], running.Nearest(2.1));
        Assert.Equal(Gain.Points[1].Reading.Heard, running.Heard(2.1));
    }
}
