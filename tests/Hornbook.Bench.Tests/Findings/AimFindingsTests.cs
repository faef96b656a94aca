using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

public sealed class AimFindingsTests
{
    [Fact]
    public void A_source_that_looks_past_the_receiver_is_told_where_to_look()
    {
        BenchPlan plan = Checking.Bare.WithSource(p => p with { Turn = 12.0 * GoodBench.Degree });
        Finding finding = Checking.The("not-facing", plan);
        Assert.Equal(Severity.Weakens, finding.Severity);
        Assert.Contains("12° and 0° off", finding.Wrong);
        Assert.Equal(("source.turn", "0 deg"), (finding.Mend!.Key, finding.Mend.NewText));
    }

    [Fact]
    public void A_receiver_that_looks_away_spoils_the_bench_and_is_not_trusted()
    {
        BenchPlan plan = Checking.Bare.WithReceiver(p => p with { Turn = 100.0 * GoodBench.Degree });
        Assert.Equal(Severity.Spoils, Checking.The("not-facing", plan).Severity);
        Assert.Equal("180 deg", Checking.The("not-facing", plan).Mend!.NewText);
        Checking.The("not-trusted", plan);
    }

    [Fact]
    public void A_tilted_source_is_told_to_level() => Assert.Equal(
        "source.tilt", Checking.The("not-facing", Checking.Bare.WithSource(p => p with { Tilt = 0.25 })).Mend!.Key);

    [Theory]
    [InlineData(0.0, 90.0, Severity.Spoils)]
    [InlineData(0.0, 45.0, Severity.Weakens)]
    [InlineData(90.0, 0.0, Severity.Spoils)]
    [InlineData(35.0, 0.0, Severity.Weakens)] // the receiver looks the other way: it has to be rolled to −35°
    public void Polarisations_that_cross_are_told_the_roll_that_mends_it(double sourceDeg, double receiverDeg, Severity severity)
    {
        BenchPlan plan = Checking.Bare.WithSource(p => p with { Roll = sourceDeg * GoodBench.Degree })
            .WithReceiver(p => p with { Roll = receiverDeg * GoodBench.Degree });
        Finding finding = Checking.The("polarisation-crossed", plan);
        Assert.Equal(severity, finding.Severity);
        Assert.Equal("receiver.roll", finding.Mend!.Key);
        double rollDeg = double.Parse(finding.Mend.NewText!.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        Checking.None("polarisation-crossed", plan.WithReceiver(p => p with { Roll = rollDeg * GoodBench.Degree }));
    }

    [Fact]
    public void Half_a_turn_of_roll_changes_nothing() =>
        Checking.None("polarisation-crossed", Checking.Bare.WithReceiver(p => p with { Roll = Math.PI }));
}
