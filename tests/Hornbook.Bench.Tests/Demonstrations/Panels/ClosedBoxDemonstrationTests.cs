using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Physics;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations.Panels;

public sealed class ClosedBoxDemonstrationTests
{
    private static readonly ClosedBoxDemonstration Box = new("box", "box");
    private static readonly IReadOnlyList<Setting> Course = Box.Course(PanelBench.Plan);

    [Fact]
    public void Its_fields_are_parallel_and_its_strips_lie_along_them_one_way_round_and_across_them_the_other()
    {
        Close.Absolute(1.0, Math.Abs(Vector.Dot(Course[1].Source.Pose.Up, Course[1].Receiver.Pose.Up)), 1e-12);
        Close.Absolute(1.0, Math.Abs(Along(Course[1])), 1e-12);
        Close.Absolute(0.0, Along(Course[2]), 1e-12);
        Close.Absolute(1.0, Math.Abs(Along(Course[3])), 1e-12);
    }

    [Fact]
    public void Flipping_keeps_the_handle_and_the_place_and_turns_the_face_however_it_is_held()
    {
        Pose held = new(new Vector(0.4, 0.1, 0.3), turn: 0.3, tilt: 0.2, roll: -0.4);
        Pose flipped = held.Flipped();
        Assert.Equal(held.Position, flipped.Position);
        Close.Absolute(0.0, (held.Up - flipped.Up).Length, 1e-15);
        Close.Absolute(0.0, (held.Forward + flipped.Forward).Length, 1e-15);
    }

    [Fact]
    public void First_nothing_is_between_and_last_the_ends_have_changed_places()
    {
        Assert.Equal(["nothing", "as held", "flipped over", "ends exchanged"], Course.Select(s => s.Label));
        Assert.Equal([false, true, true, true], Course.Select(s => s.Panels.Named("box").Stands));
        Assert.Equal((Course[1].Source.Pose, Course[1].Source.Antenna), (Course[3].Receiver.Pose, Course[3].Receiver.Antenna));
        Assert.Equal((Course[1].Receiver.Pose, Course[1].Receiver.Antenna), (Course[3].Source.Pose, Course[3].Source.Antenna));
        Assert.Equal(Course[1].Panels.Named("box"), Course[3].Panels.Named("box"));
    }

    [Fact]
    public void The_box_stops_one_way_round_passes_the_other_and_is_no_one_way_device()
    {
        Prediction prediction = Predicting.Of(PanelBench.Plan, Box);
        Comparison[] numbers = [.. Assert.IsType<LawEvaluation>(prediction.Evaluation).Comparisons];

        // N. Marcuvitz, Waveguide Handbook, 1951, §§ 5.18 and 5.19, from memory: strips of half a period of 5 mm pass -18.26 dB along and -0.065 dB across.
        Close.Absolute(-18.26, numbers[0].InBooks!.Value, 0.03);
        Close.Absolute(-0.065, numbers[1].InBooks!.Value, 0.01);

        // Twenty decibels down a prediction is good to a few decibels: what goes round the edges meets what leaks.
        Close.Absolute(numbers[0].InBooks!.Value, numbers[0].OnBench!.Value, 4.0);
        Close.Absolute(numbers[1].InBooks!.Value, numbers[1].OnBench!.Value, 0.3);

        // derived: reciprocity; a full-wave comparison found 0.02 to 0.2 dB for this formulation with one panel, and twice that is allowed 20 dB down.
        Close.Absolute(0.0, numbers[3].OnBench!.Value, 0.4);
        Assert.Contains("flipped over", prediction.Heard, StringComparison.Ordinal);
    }

    // Strips lie at 45° from its upright, as a roll: the upright less what a roll takes to its right.
    private static double Along(Setting setting)
    {
        Pose box = setting.Panels.Named("box").Pose;
        Vector strips = (box.Up - box.Left) * Math.Sqrt(0.5);
        return Vector.Dot(strips, setting.Source.Pose.Up);
    }
}
