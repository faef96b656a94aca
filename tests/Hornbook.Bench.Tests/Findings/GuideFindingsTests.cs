using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

public sealed class GuideFindingsTests
{
    [Fact]
    public void A_bench_that_cannot_be_computed_at_all_gives_findings_and_no_exception()
    {
        // WR-90 begins to carry at 6.557 GHz (EIA RS-261-B; c/2a).
        IReadOnlyList<Finding> found = Checking.Check(Checking.Good with { Frequency = 6.5e9 });
        Assert.Equal(3, found.Count(f => f.Id == "guide-below-cutoff"));
        Assert.All(found, f => Assert.Contains("6.5571 GHz", f.Wrong));
        Assert.All(found, f => Assert.Equal(Severity.Spoils, f.Severity));
    }

    [Fact]
    public void An_unused_antenna_below_cutoff_is_a_note_and_the_rest_is_looked_over()
    {
        BenchPlan plan = Checking.Bare with { Antennas = [.. Checking.Bare.Antennas, new NamedAntenna("thin", Open("WR-42"))] };
        Finding finding = Checking.The("guide-below-cutoff", plan);
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal("antennas.thin.guide", finding.Mend!.Key);
        Assert.Contains(StandardGuides.For(plan.Frequency), g => g.Name == finding.Mend.NewText);
        Assert.Contains(Checking.Check(plan), f => f.Id == "emission");
    }

    [Fact]
    public void A_demonstration_that_needs_it_is_spoilt_and_the_others_are_still_looked_over()
    {
        BenchPlan plan = Checking.Good with
        {
            Antennas = [.. Checking.Good.Antennas, new NamedAntenna("thin", Open("WR-42"))],
            Demonstrations = [new AntennaChangeDemonstration("change", BenchEnd.Receiver, ["horn", "thin"]), GoodBench.BeamWidth with { Points = 5 }],
        };
        Assert.Equal(Severity.Spoils, Checking.The("guide-below-cutoff", plan).Severity);
    }

    [Fact]
    public void A_guide_that_carries_two_modes_weakens_the_bench()
    {
        // WR-187 at 10.525 GHz: TE20 begins at 6.305 GHz (EIA RS-261-B; c/a).
        Finding finding = Checking.The("guide-overmoded", WithReceivingGuide("WR-187"));
        Assert.Equal(Severity.Weakens, finding.Severity);
        Assert.Contains("TE20 begins at 6.3049 GHz", finding.Wrong);
    }

    [Fact]
    public void A_guide_near_its_next_mode_is_a_note()
    {
        // WR-112 is meant for 7.05 to 10.0 GHz; TE20 begins at 10.519 GHz (EIA RS-261-B).
        BenchPlan plan = WithReceivingGuide("WR-112") with { Frequency = 10.4e9 };
        Finding finding = Checking.The("guide-outside-band", plan);
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Contains("7.05 GHz to 10 GHz", finding.Wrong);
    }

    private static BenchPlan WithReceivingGuide(string guide) => Checking.Bare with
    {
        Antennas = [.. Checking.Bare.Antennas, new NamedAntenna("other", Open(guide))],
        Receiver = Checking.Bare.Receiver with { Antenna = "other" },
    };

    private static OpenGuide Open(string guide) => new(StandardGuides.Find(guide)!.Guide, Conductor.Brass);
}
