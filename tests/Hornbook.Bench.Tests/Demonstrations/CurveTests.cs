using Hornbook.Bench.Demonstrations;
using Hornbook.Physics;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations;

public sealed class CurveTests
{
    private static readonly BeamWidthDemonstration Few = GoodBench.BeamWidth with { Points = 9 };

    [Fact]
    public void Reads_what_the_scene_reads_at_each_setting() => Assert.All(
        Predicting.Curve(Few).Points,
        p => Assert.Equal(GoodBench.Scene.Read(p.Setting.Source, p.Setting.Receiver), p.Reading));

    [Fact]
    public void Is_the_same_each_time() => Assert.Equal(Predicting.Curve(Few).Points, Predicting.Curve(Few).Points);

    [Fact]
    public void Its_band_is_the_ripple_carried_through_the_detection()
    {
        foreach (CurvePoint point in Predicting.Curve(Few).Points)
        {
            double swing = Decibels.ToRatio(point.Reading.RippleDb);
            Assert.Equal(GoodBench.Scene.Hear(point.Reading.ReceivedPower * swing), point.Upper);
            Assert.Equal(GoodBench.Scene.Hear(point.Reading.ReceivedPower / swing), point.Lower);
            Assert.True(point.Lower.DetectorVoltage < point.Reading.Heard.DetectorVoltage);
            Assert.True(point.Reading.Heard.DetectorVoltage < point.Upper.DetectorVoltage);
        }
    }

    [Fact]
    public void Tells_its_progress_up_to_the_end()
    {
        Shares shares = new();
        Curve.Of(GoodBench.Scene, Few, shares, TestContext.Current.CancellationToken);
        Assert.Equal(Few.Points, shares.Told.Count);
        Assert.Equal(1.0, shares.Told.Max());
    }

    [Fact]
    public void Stops_when_asked()
    {
        using CancellationTokenSource stopped = new();
        stopped.Cancel();
        Assert.Throws<OperationCanceledException>(() => Curve.Of(GoodBench.Scene, Few, cancellation: stopped.Token));
    }

    [Theory]
    [InlineData(-0.5, "deg", -28.6)]
    [InlineData(0.62, "cm", 62.0)]
    public void Shows_its_abscissa_in_the_unit_of_the_bench(double si, string unit, double shown)
    {
        // 0.5 rad = 90°/π = 28.65°, derived.
        Abscissa abscissa = unit == "deg" ? Abscissa.Turn : Abscissa.Distance;
        Assert.Equal(unit, abscissa.Unit);
        Close.Absolute(shown, abscissa.Shown(si), 0.06);
    }
}
