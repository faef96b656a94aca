using Hornbook.Bench.Files;
using Hornbook.Bench.Programmes;
using Hornbook.Tabletop.Rehearsing;
using Xunit;

namespace Hornbook.Tests.Tabletop.Rehearsing;

public sealed class ShowChangesTests
{
    private static IReadOnlyList<string> Names(BenchFile file) => [.. Show.Of(file.Plan!).Select(shown => shown.Name)];

    [Fact]
    public void A_demonstration_changes_places_with_its_neighbour_and_the_comments_stay()
    {
        BenchFile moved = ExampleBench.File.Edit(ShowChanges.Moved(ExampleBench.File.Plan!, ExampleBench.File.Plan!.Demonstrations[2], -1));
        Assert.Equal(["beam-width", "distance-law", "gain", "polarisation"], Names(moved));
        Assert.Contains("# from where its far zone has begun", moved.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_first_goes_no_earlier_and_the_last_no_later()
    {
        Assert.Empty(ShowChanges.Moved(ExampleBench.File.Plan!, ExampleBench.File.Plan!.Demonstrations[0], -1));
        Assert.Empty(ShowChanges.Moved(ExampleBench.File.Plan!, ExampleBench.File.Plan!.Demonstrations[^1], 1));
    }

    [Fact]
    public void What_is_left_out_comes_back_to_its_place()
    {
        BenchFile without = ExampleBench.File.Edit(ShowChanges.Aside(ExampleBench.File.Plan!.Demonstrations[1], true));
        Assert.Equal(["beam-width", "distance-law", "polarisation"], Names(without));
        Assert.Equal(Names(ExampleBench.File), Names(without.Edit(ShowChanges.Aside(without.Plan!.Demonstrations[1], false))));
    }

    [Fact]
    public void Everything_can_be_stood_as_a_programme_wants_it()
    {
        Programme programme = Programme.Propose(ExampleBench.File.Plan!, Show.Of(ExampleBench.File.Plan!), cancellation: CancellationToken.None);
        ProgrammeItem item = programme.Items[^1];
        BenchFile stood = ExampleBench.File.Edit(ShowChanges.Standing(item));
        Assert.Equal(item.Bench.Detection.Amplifier.Gain, stood.Plan!.Detection.Amplifier.Gain, 1e-3 * item.Bench.Detection.Amplifier.Gain);

        // To what a program writes: a tenth of a millimetre.
        Assert.InRange((item.Prediction.Curve.Points[0].Setting.Receiver.Pose.Position - stood.Plan.Receiver.Pose.Position).Length, 0.0, 1e-4);
        Assert.True(stood.HasThingsOf(ExampleBench.File));
    }
}
