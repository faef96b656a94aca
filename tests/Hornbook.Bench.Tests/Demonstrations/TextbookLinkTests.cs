using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics.Antennas;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations;

public sealed class TextbookLinkTests
{
    private static Scene Scene => GoodBench.Scene;

    [Fact]
    public void Friis_holds_far_away()
    {
        // A hundredth of a decibel at 200 times 2D²/λ: the far-zone limit of the exact link, derived.
        TextbookComparison far = Beside(200.0 * Scene.Source.FarDistance);
        Close.Absolute(0.0, far.FriisErrorDb, 0.01);
    }

    [Fact]
    public void Friis_counts_what_the_antennas_throw_back()
    {
        // law: an antenna with |Γ| = ½ takes and gives three quarters; the exact link falls with it, and Friis holds as before.
        Horn horn = (Horn)GoodBench.Plan.Antenna("horn");
        BenchPlan plan = GoodBench.Plan with { Antennas = [new NamedAntenna("horn", horn with { MeasuredReflection = 0.5 })], Demonstrations = [] };
        Scene scene = Scene.Of(plan);
        ReceiverEnd there = At(200.0 * scene.Source.FarDistance);
        TextbookComparison far = TextbookLink.TiedTo(scene, plan.Source, there).Beside(plan.Source, there, scene.Read(plan.Source, there).Link);
        Close.Absolute(0.0, far.FriisErrorDb, 0.01);
        Close.Relative(0.75 * 0.75, scene.Read(plan.Source, there).Mismatch, 1e-12);
    }

    [Fact]
    public void Friis_promises_too_much_close_by_and_the_more_the_closer()
    {
        double[] errors = [.. Enumerable.Range(1, 4).Select(i => Beside(2.0 * Scene.Source.FarDistance / i).FriisErrorDb)];
        Assert.Equal(errors.Order(), errors);
        Assert.True(errors[0] > 0.1);
    }

    [Fact]
    public void At_the_greater_far_distance_its_error_is_the_one_told_beforehand()
    {
        TextbookComparison there = Beside(Scene.Source.FarDistance);
        Close.Absolute(there.FriisErrorDb, there.FarZoneErrorDb, 1e-9);
        Assert.Equal(Scene.Source.FarDistance, there.FarZone);
    }

    [Fact]
    public void The_inverse_square_law_is_right_where_it_is_tied_and_wrong_closer_by()
    {
        ReceiverEnd reference = At(1.6);
        TextbookLink tied = TextbookLink.TiedTo(Scene, Scene.Plan.Source, reference);
        TextbookComparison there = tied.Beside(Scene.Plan.Source, reference, Scene.Read(Scene.Plan.Source, reference).Link);
        Close.Absolute(0.0, there.InverseSquareErrorDb, 1e-9);
        TextbookComparison near = tied.Beside(Scene.Plan.Source, At(0.8), Scene.Read(Scene.Plan.Source, At(0.8)).Link);
        Assert.True(near.InverseSquareErrorDb > 0.3);
        // Half the distance is four times the power by that law, derived.
        Close.Relative(4.0 * there.InverseSquareLink, near.InverseSquareLink, 1e-12);
    }

    [Fact]
    public void As_it_stands_the_law_is_tied_to_twice_the_distance()
    {
        TextbookComparison comparison = TextbookLink.AsItStands(Scene);
        Close.Relative(0.9, comparison.Distance, 1e-12);
        Close.Relative(1.8, comparison.ReferenceDistance, 1e-12);
        Assert.Equal(Scene.Read().Link, comparison.Link);
    }

    private static TextbookComparison Beside(double distance) => TextbookLink.TiedTo(Scene, Scene.Plan.Source, At(distance))
        .Beside(Scene.Plan.Source, At(distance), Scene.Read(Scene.Plan.Source, At(distance)).Link);

    private static ReceiverEnd At(double distance) => Moves.OnAxis(Scene.Plan.Source, Scene.Plan.Receiver, distance);
}
