using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Programmes;
using Hornbook.Physics;
using Hornbook.Physics.Detection;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Xunit;

namespace Hornbook.Bench.Tests.Programmes;

public sealed class ProgrammeTests
{
    private static readonly BenchPanel Grid = new(
        "grid", new Panel(new RectangularSurface(0.3, 0.3), new StripGrid(5e-3, 2.5e-3)), new Pose(new Vector(0.7, 0.0, 0.3)), Stands: false);

    private static readonly BenchPlan Plan = GoodBench.Plan with { Panels = [Grid] };
    private static readonly GridTurnDemonstration Turn = new("turn", "grid", 0.0, Math.PI, 19);
    private static readonly GridRevivalDemonstration Revival = new("revival", "grid", 0.0, Math.PI, 19);
    private static readonly Demonstration[] Show = [GoodBench.Polarisation, Turn, Revival, GoodBench.BeamWidth];
    private static readonly Programme Proposed = Programme.Propose(Plan, Show, cancellation: CancellationToken.None);

    [Fact]
    public void Has_every_demonstration_in_the_order_wanted()
    {
        Assert.Equal(Show.Select(d => d.Name), Proposed.Items.Select(item => item.Demonstration.Name));
        Assert.Empty(Proposed.Left);
    }

    [Fact]
    public void Each_is_heard_without_clipping_and_above_the_noise() => Assert.All(Proposed.Items, item =>
    {
        CurvePoint strongest = item.Prediction.Curve.Points.MaxBy(p => p.Reading.ReceivedPower)!;
        Assert.Equal(ToneState.Clear, strongest.Reading.Heard.State);

        // common practice, no source: twenty just-noticeable steps are heard by everybody.
        double[] tones = [.. item.Prediction.Curve.Points.Select(p => p.Reading.Heard.Tone)];
        Assert.True(PitchSteps.Between(tones.Min(), tones.Max()) > 20.0);
    });

    [Fact]
    public void A_badly_set_gain_is_put_right()
    {
        BenchPlan deaf = Plan with { Detection = Plan.Detection with { Amplifier = Plan.Detection.Amplifier with { Gain = 1.0 } } };
        ProgrammeItem item = Assert.Single(Propose(deaf, [GoodBench.Polarisation]).Items);

        Assert.True(item.Bench.Detection.Amplifier.Gain >= 50.0);
        Assert.Contains(item.ToDo, change => change.StartsWith("Set the amplifier's gain to ", StringComparison.Ordinal));
        Assert.DoesNotContain(item.GivenUp, given => given.Contains("noise", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_to_be_done_is_what_differs_from_the_state_before()
    {
        ProgrammeItem turn = Proposed.Items[1];
        Assert.Contains(turn.ToDo, change => change.StartsWith("Put in 'grid' at ", StringComparison.Ordinal));

        ProgrammeItem beam = Proposed.Items[3];
        Assert.Contains("Take 'grid' away.", beam.ToDo);
        Assert.Equal(Proposed.Items.Sum(item => item.ToDo.Count), Proposed.Changes);
    }

    [Fact]
    public void Showing_the_same_thing_twice_needs_no_change_of_ends_or_gain_between()
    {
        Programme twice = Propose(Plan, [GoodBench.Polarisation, GoodBench.Polarisation with { Name = "again" }]);

        Assert.Equal(twice.Items[0].Bench.Detection.Amplifier.Gain, twice.Items[1].Bench.Detection.Amplifier.Gain);
        Assert.DoesNotContain(twice.Items[1].ToDo, change => change.Contains("gain", StringComparison.Ordinal));
    }

    [Fact]
    public void What_leaves_the_table_at_every_distance_is_left_out_with_the_reason()
    {
        DistanceDemonstration far = new("far", 3.0, 4.0, 5);
        LeftOut left = Assert.Single(Propose(Plan, [far]).Left);

        Assert.Equal("far", left.Demonstration.Name);
        Assert.Contains("table", left.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Tells_its_progress_up_to_the_end_and_stops_when_asked()
    {
        Shares shares = new();
        Programme.Propose(Plan, [GoodBench.Polarisation], shares, TestContext.Current.CancellationToken);
        Assert.Equal(1.0, shares.Told.Max());

        using CancellationTokenSource stopped = new();
        stopped.Cancel();
        Assert.Throws<OperationCanceledException>(() => Programme.Propose(Plan, Show, cancellation: stopped.Token));
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(0.5)] // from here on the curves are predicted, side by side
    public void It_is_stopped_wherever_it_is(double share)
    {
        using CancellationTokenSource stopped = new();
        StopAt stop = new(share, stopped);
        Assert.Throws<OperationCanceledException>(() => Programme.Propose(Plan, Show, stop, stopped.Token));
    }

    [Fact]
    public void A_hand_inside_the_keep_out_distance_is_said()
    {
        BenchPlan strong = Plan with { Source = Plan.Source with { Power = 1.0, WorstCasePower = 1.0 } };
        ProgrammeItem item = Assert.Single(Propose(strong, [Turn]).Items);

        Assert.Contains(item.GivenUp, given => given.Contains("keep-out", StringComparison.Ordinal));
    }

    private static Programme Propose(BenchPlan plan, IReadOnlyList<Demonstration> show) =>
        Programme.Propose(plan, show, cancellation: TestContext.Current.CancellationToken);

    private sealed class StopAt(double share, CancellationTokenSource source) : IProgress<double>
    {
        public void Report(double value)
        {
            if (value > share && value < 1.0)
            {
                source.Cancel();
            }
        }
    }
}
