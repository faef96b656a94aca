using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

public sealed class NearZoneFindingsTests
{
    [Fact]
    public void Inside_the_far_distance_the_finding_says_what_friis_would_have_promised()
    {
        // 2D²/λ = 2 × 94² mm²/28.48 mm = 62 cm, derived.
        Finding finding = Checking.The("near-zone", At(0.4));
        Assert.Equal(Severity.Weakens, finding.Severity);
        Assert.Contains("2D²/λ = 62 cm", finding.Wrong);
        Assert.Contains("too much", finding.Consequence);
        Assert.Contains("65 cm", finding.Mend!.Move);
    }

    [Fact]
    public void Beyond_it_there_is_none() => Checking.None("near-zone", At(0.63));

    [Fact]
    public void Where_the_formulas_hardly_err_it_is_a_note_only()
    {
        // Two small horns: their far distance is 2 × 50² mm²/28.48 mm = 18 cm, derived, and the error there is small.
        BenchPlan plan = At(0.17) with { Receiver = At(0.17).Receiver with { Antenna = "open" } };
        BenchPlan small = plan with { Source = plan.Source with { Antenna = "small" } };
        Assert.Equal(Severity.Note, Checking.The("near-zone", small).Severity);
    }

    [Fact]
    public void Horns_mouth_to_mouth_make_standing_waves_that_are_heard()
    {
        Finding finding = Checking.The("standing-waves", At(0.1));
        // λ/4 of 28.48 mm, derived.
        Assert.Contains("7.1 mm", finding.Consequence);
    }

    private static BenchPlan At(double distance) => Checking.Bare with
    {
        Receiver = Moves.OnAxis(Checking.Bare.Source, Checking.Bare.Receiver, distance),
    };
}
