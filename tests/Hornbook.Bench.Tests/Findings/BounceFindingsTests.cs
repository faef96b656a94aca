using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Physics.Panels.Sheets;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

public sealed class BounceFindingsTests
{
    [Fact]
    public void Low_axes_cut_the_first_fresnel_zone()
    {
        // r₁ = √(λd)/2 = √(28.48 mm × 0.9 m)/2 = 8.01 cm in the middle, derived.
        Finding finding = Checking.The("table-bounce", Low(0.06));
        Assert.Contains("8.01 cm", finding.Wrong);
        Assert.Contains("6 cm below", finding.Wrong);
        Assert.Equal(Severity.Weakens, finding.Severity);
    }

    [Fact]
    public void Raised_as_told_the_finding_is_gone()
    {
        string move = Checking.The("table-bounce", Low(0.06)).Mend!.Move;
        double centimetres = double.Parse(move.Split(' ')[^2], System.Globalization.CultureInfo.InvariantCulture);
        Checking.None("table-bounce", Low(centimetres / 100.0));
    }

    [Fact]
    public void A_table_that_is_part_of_the_prediction_needs_no_warning()
    {
        BenchPlan low = Low(0.06) with { Demonstrations = [] };

        Checking.The("table-bounce", low);
        Checking.None("table-bounce", low with { Table = new TableTop(1.3, 0.3).Of(new Metal()) });
    }

    [Fact]
    public void Upright_fields_hardly_come_back_from_wood_where_they_meet_brewsters_angle()
    {
        // tan of Brewster's angle is √ε_r = √1.99 (ITU-R P.2040-3, wood): 54.7° from the vertical, so h = d/2 × cot 54.7° = 0.319 m
        // for 0.9 m, derived. An open guide is broad enough for a metal table to be heard from there.
        Finding finding = Checking.The("table-bounce", Broad(0.319, 0.0));
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Contains("up to ±0 dB", finding.Consequence);
    }

    [Fact]
    public void Level_fields_do_come_back() =>
        Assert.Equal(Severity.Weakens, Checking.The("table-bounce", Broad(0.2, Math.PI / 2.0)).Severity);

    [Fact]
    public void Beams_tilted_down_light_the_table_and_tilted_up_they_do_not() =>
        Assert.True(MetalDb(Tilted(-10.0)) > 3.0 * MetalDb(Tilted(10.0)));

    [Fact]
    public void A_field_at_45_degrees_comes_back_from_metal_at_right_angles_to_itself()
    {
        // Image theory: metal turns the level part round and leaves the upright one, so that the image of a field at 45° lies at −45°.
        // Facing ends with like fields are rolled against each other.
        Assert.True(MetalDb(Broad(0.06, 0.0)) > 3.0);
        Assert.InRange(MetalDb(Broad(0.06, Math.PI / 4.0, -Math.PI / 4.0)), 0.0, 0.3);
    }

    private static double MetalDb(BenchPlan plan)
    {
        string consequence = Checking.The("table-bounce", plan).Consequence;
        return double.Parse(consequence.Split("a metal one by ±")[1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
    }

    private static BenchPlan Tilted(double degrees) =>
        Low(0.079).WithSource(p => p with { Tilt = degrees * GoodBench.Degree }).WithReceiver(p => p with { Tilt = degrees * GoodBench.Degree });

    private static BenchPlan Low(double height) => Checking.Bare.WithSource(p => p.Lifted(height)).WithReceiver(p => p.Lifted(height));

    private static BenchPlan Broad(double height, double roll) => Broad(height, roll, roll);

    private static BenchPlan Broad(double height, double sourceRoll, double receiverRoll)
    {
        BenchPlan plan = Low(height).WithSource(p => p with { Roll = sourceRoll }).WithReceiver(p => p with { Roll = receiverRoll });
        return plan with { Source = plan.Source with { Antenna = "open" }, Receiver = plan.Receiver with { Antenna = "open" } };
    }
}
