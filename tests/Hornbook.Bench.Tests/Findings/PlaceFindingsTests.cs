using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

public sealed class PlaceFindingsTests
{
    [Fact]
    public void A_receiver_beyond_the_edge_is_told_where_the_edge_is()
    {
        BenchPlan plan = Checking.Bare.WithReceiver(p => p with { Position = new Vector(2.5, 0.0, 0.3) });
        Finding finding = Checking.The("off-table", plan);
        Assert.Equal(Severity.Spoils, finding.Severity);
        Assert.Contains("30 cm beyond", finding.Wrong);
        Assert.Equal(("receiver.x", "2.2 m"), (finding.Mend!.Key, finding.Mend.NewText));
    }

    [Fact]
    public void A_source_beside_the_table_is_told_the_side()
    {
        BenchPlan plan = Checking.Bare.WithSource(p => p with { Position = new Vector(0.3, -0.6, 0.3) });
        Assert.Equal(("source.y", "-45 cm"), (Checking.The("off-table", plan).Mend!.Key, Checking.The("off-table", plan).Mend!.NewText));
    }

    [Fact]
    public void A_mouth_that_reaches_into_the_table_is_raised_clear_of_it()
    {
        // Half of the mouth's 79 mm stands below its centre; rolled by 90° it would be half of 94 mm, derived.
        Finding finding = Checking.The("antenna-too-low", Checking.Bare.WithSource(p => p.Lifted(0.03)));
        Assert.Contains("9.5 mm below", finding.Wrong);
        Checking.None("antenna-too-low", Checking.Bare.WithSource(p => p.Lifted(0.0396)));
        Finding rolled = Checking.The("antenna-too-low", Checking.Bare.WithSource(p => p.Lifted(0.0396) with { Roll = Math.PI / 2.0 }));
        Assert.Equal(("source.z", "5 cm"), (rolled.Mend!.Key, rolled.Mend.NewText));
    }

    [Fact]
    public void A_horn_that_sticks_out_over_the_edge_is_a_note()
    {
        // The horn is 130 mm long and its mouth 100 mm from the edge, derived.
        Finding finding = Checking.The("antenna-overhangs", Checking.Bare.WithSource(p => p with { Position = new Vector(0.1, 0.0, 0.3) }));
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Contains("3 cm beyond", finding.Wrong);
    }

    [Fact]
    public void Mouths_closer_than_a_wavelength_spoil_the_prediction()
    {
        // λ = c/10.525 GHz = 28.48 mm, derived.
        Checking.The("mouths-touch", Checking.Bare.WithReceiver(p => p with { Position = new Vector(0.328, 0.0, 0.3) }));
        Checking.None("mouths-touch", Checking.Bare.WithReceiver(p => p with { Position = new Vector(0.33, 0.0, 0.3) }));
    }
}
