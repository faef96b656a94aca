using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Exposure;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

public sealed class ExposureFindingsTests
{
    private const string Icnirp = "icnirp-2020-local-public";

    [Fact]
    public void A_table_that_ends_inside_the_keep_out_distance_must_not_be_shown()
    {
        Finding finding = Checking.The("edge-inside-keep-out", Short(1.2));
        Assert.Equal(Severity.Spoils, finding.Severity);
        Assert.Equal("source.worst_case_power", finding.Mend!.Key);
        Checking.None("edge-inside-keep-out", Short(2.2));
    }

    [Fact]
    public void The_power_that_is_told_mends_it()
    {
        BenchPlan plan = Short(1.2);
        string text = Checking.The("edge-inside-keep-out", plan).Mend!.NewText!;
        double power = double.Parse(text.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture) * 1e-3;
        Checking.None("edge-inside-keep-out", plan with { Source = plan.Source with { Power = power, WorstCasePower = power } });
        // It is cut down to two digits: a tenth more is surely too much.
        Checking.The("edge-inside-keep-out", plan with { Source = plan.Source with { Power = power, WorstCasePower = 1.1 * power } });
    }

    [Fact]
    public void The_edge_found_is_the_one_on_the_axis_and_its_density_the_field_s_own()
    {
        Scene scene = Scene.Of(Short(1.2));
        // The far edge is 0.9 m in front of the mouth, derived.
        double density = PowerDensity.At(scene.Source, scene.Plan.Source.WorstCasePower, new Vector(0.9, 0.0, 0.0));
        string told = Checking.The("edge-inside-keep-out", scene.Plan).Wrong.Split("gets ")[1].Split(' ')[0];
        Close.Relative(density, double.Parse(told, System.Globalization.CultureInfo.InvariantCulture), 0.05); // two digits are told
    }

    [Fact]
    public void A_beam_that_is_swept_over_the_side_of_the_table_is_told_and_one_that_only_listens_is_not()
    {
        BenchPlan turnsSource = Checking.Bare with { Demonstrations = [GoodBench.BeamWidth with { Turned = BenchEnd.Source, Points = 9 }] };
        Finding finding = Checking.The("edge-swept", turnsSource);
        Assert.Equal(Severity.Weakens, finding.Severity);
        // At 40° the side, 45 cm off, is 45 cm/sin 40° = 70 cm away on the axis, and nearer beside it: at least 45 cm, derived.
        string told = finding.Wrong.Split(" cm from")[0].Split(' ')[^1];
        Assert.InRange(double.Parse(told, System.Globalization.CultureInfo.InvariantCulture), 45.0, 70.0);
        Checking.None("edge-swept", Checking.Bare with { Demonstrations = [GoodBench.BeamWidth with { Points = 9 }] });
    }

    [Fact]
    public void A_receiver_inside_it_is_a_note_for_the_hand_that_moves_it()
    {
        BenchPlan plan = Checking.Bare.WithReceiver(p => p with { Position = new Vector(1.0, 0.0, 0.3) });
        Assert.Equal(Severity.Note, Checking.The("receiver-inside-keep-out", plan).Severity);
        Checking.None("receiver-inside-keep-out", plan with { ExposureLimit = Icnirp });
    }

    [Fact]
    public void Beside_the_source_the_hand_is_told_what_is_known_at_60_degrees()
    {
        // A receiver 90° off the axis of an open end, 7.5 cm away: what the mouth's currents alone give there is below the limit, and not to be trusted.
        BenchPlan plan = Checking.Bare.WithReceiver(p => p with { Position = new Vector(0.3, 0.075, 0.3) });
        plan = plan with { Source = plan.Source with { Antenna = "open" } };
        ExposureField field = ExposureField.Of(GoodBench.Scene.Antenna("open"), plan.Source.WorstCasePower);
        double aside = field.Density(new Vector(0.0, 0.075, 0.0));
        double trusted = field.Density(new Vector(0.0375, 0.075 * Math.Sin(Math.PI / 3.0), 0.0));
        Assert.True(aside < 0.1 && trusted > 0.1, $"{aside} {trusted}"); // the strictest limit for the public, 0.1 W/m²
        string told = Checking.The("receiver-inside-keep-out", plan).Wrong.Split("distance: ")[1].Split(' ')[0];
        Close.Relative(trusted, double.Parse(told, System.Globalization.CultureInfo.InvariantCulture), 0.05); // two digits are told
    }

    [Fact]
    public void The_worst_case_counts_and_not_the_power_that_is_set()
    {
        BenchPlan weak = Short(1.2) with { Source = Short(1.2).Source with { Power = 1e-6, WorstCasePower = 15e-3 } };
        Assert.Contains("At 15 mW", Checking.The("edge-inside-keep-out", weak).Wrong);
        Checking.None("edge-inside-keep-out", weak with { Source = weak.Source with { WorstCasePower = 1e-6 } });
    }

    [Fact]
    public void A_worst_case_that_is_not_stated_weakens_what_is_said_of_exposure()
    {
        BenchPlan plan = Checking.Bare with { Source = Checking.Bare.Source with { IsWorstCaseStated = false } };
        Assert.Equal("source.worst_case_power", Checking.The("worst-case-not-stated", plan).Mend!.Key);
    }

    [Fact]
    public void A_limit_of_no_known_name_is_replaced_by_the_strictest_and_said_so()
    {
        Finding finding = Checking.The("exposure-limit-unfit", Checking.Bare with { ExposureLimit = "nowhere-1999" });
        Assert.Equal(("exposure.limit", "strictest"), (finding.Mend!.Key, finding.Mend.NewText));
        Checking.None("exposure-limit-unfit", Checking.Bare with { ExposureLimit = Icnirp });
    }

    [Fact]
    public void A_limit_for_other_frequencies_is_replaced_as_well()
    {
        // Health Canada's Safety Code 6 (2015) is kept here from 6 GHz up; WR-187 is meant for 3.95 to 5.85 GHz (EIA RS-261-B).
        BenchPlan plan = Checking.Bare with
        {
            Frequency = 5e9,
            Antennas = [new NamedAntenna("horn", new OpenGuide(StandardGuides.Find("WR-187")!.Guide, Conductor.Brass))],
            ExposureLimit = "canada-public",
        };
        Assert.Contains("6 GHz to 150 GHz, not 5 GHz", Checking.The("exposure-limit-unfit", plan).Wrong);
    }

    private static BenchPlan Short(double length) => Checking.Bare with { Table = Checking.Bare.Table with { Length = length } };
}
