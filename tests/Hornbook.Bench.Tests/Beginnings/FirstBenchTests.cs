using CsCheck;
using Hornbook.Bench.Beginnings;
using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Editing;
using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics.Detection;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Beginnings;

public sealed class FirstBenchTests
{
    // derived: the answers that the form begins with, those of the example bench
    private static readonly BenchWish Usual = new(10.525e9, 5e-3, AntennaSet.TwoSizesAndOpenGuide, 1.8, 0.7, Audience.Class);

    // derived: the whole range of each question, evenly by ratio
    private static readonly Gen<BenchWish> Wishes = Gen.Select(
        Evenly(2.6e9, 40e9), Evenly(1e-5, 1.0), Gen.Enum<AntennaSet>(), Evenly(0.4, 10.0), Evenly(0.2, 5.0), Gen.Enum<Audience>(),
        (frequency, power, antennas, length, width, audience) => new BenchWish(frequency, power, antennas, length, width, audience));

    [Fact]
    public void Nothing_spoils_the_bench_of_any_answers()
    {
        int found = 0;
        Wishes.Sample(
            wish =>
            {
                FirstBench bench = FirstBench.Of("Mine", wish);
                if (bench.IsFound)
                {
                    Interlocked.Increment(ref found);
                    Assert.Empty(bench.File.Problems);
                    Assert.Empty(Spoiling(bench.File.Plan!));
                }
                else
                {
                    Assert.NotEmpty(bench.Obstacle.Why);
                }
            },
            iter: 60, threads: 2);
        // derived: a third of all answers at least can be met, or the test shows nothing
        Assert.True(found > 20, $"{found} of 60 found");
    }

    [Theory]
    [InlineData(AntennaSet.HornAndOpenGuide)]
    [InlineData(AntennaSet.TwoHorns)]
    [InlineData(AntennaSet.TwoSizesAndOpenGuide)]
    [InlineData(AntennaSet.OpenGuides)]
    public void Everybody_with_a_usual_table_gets_a_bench_that_sounds(AntennaSet antennas)
    {
        foreach (Audience audience in Enum.GetValues<Audience>())
        {
            BenchPlan plan = Made(Usual with { Antennas = antennas, Audience = audience }).Plan!;
            Assert.Equal(ToneState.Clear, Scene.Of(plan).Read().Heard.State);
            Assert.NotEmpty(plan.Demonstrations);
        }
    }

    [Fact]
    public void It_says_what_was_answered()
    {
        BenchPlan plan = Made(Usual).Plan!;
        Assert.Equal("Mine", plan.Title);
        Close.Relative(Usual.Frequency, plan.Frequency, 1e-12);
        Close.Relative(Usual.Power, plan.Source.Power, 1e-12);
        Close.Relative(Usual.Power, plan.Source.WorstCasePower, 1e-12);
        Close.Relative(Usual.TableLength, plan.Table.Length, 1e-12);
        Close.Relative(Usual.TableWidth, plan.Table.Width, 1e-12);
        Assert.Equal(["large-horn", "small-horn", "probe"], plan.Antennas.Select(antenna => antenna.Name));
        Assert.Equal(["polarisation", "beam-width", "gain", "distance-law"], plan.Demonstrations.Select(shown => shown.Name));
    }

    [Fact]
    public void Its_comments_explain_it_and_its_text_stays_as_it_is_when_something_is_moved()
    {
        BenchFile file = Made(Usual);
        // derived: more comments than tables
        Assert.True(file.Text.Split('#').Length > 20);
        Assert.Contains("people stay", file.Text, StringComparison.Ordinal);
        Assert.True(file.Edit(BenchChange.ToText("receiver.x", "1.1 m")).IsUsable);
    }

    [Fact]
    public void A_source_that_reaches_the_audience_is_refused_with_a_power_that_is_not()
    {
        // derived: ten times what the strictest limit allows at the edges of so small a table
        BenchWish strong = Usual with { Power = 1.0 };
        FirstBench refused = FirstBench.Of("Mine", strong);
        Assert.Equal(BenchQuestion.Power, refused.Obstacle?.Question);
        string offered = refused.Obstacle!.Why.Split("at most ")[1].Split(',')[0];
        Assert.Null(BenchWish.Read(BenchQuestion.Power, offered, out double power));
        Assert.True(FirstBench.Of("Mine", strong with { Power = power }).IsFound);
    }

    [Fact]
    public void A_table_without_room_is_refused() =>
        // derived: six wavelengths of 115 mm and the guides behind the mouths are longer than this
        Assert.Equal(BenchQuestion.TableLength, FirstBench.Of("Mine", Usual with { Frequency = 2.6e9, TableLength = 0.5 }).Obstacle?.Question);

    [Theory]
    [InlineData("10.525", BenchQuestion.Frequency)]
    [InlineData("41 GHz", BenchQuestion.Frequency)]
    [InlineData("-5 mW", BenchQuestion.Power)]
    [InlineData("NaN m", BenchQuestion.TableLength)]
    [InlineData("1,8 m", BenchQuestion.TableWidth)]
    public void An_answer_that_does_not_fit_is_told(string text, BenchQuestion question) =>
        Assert.NotNull(BenchWish.Read(question, text, out _));

    [Theory]
    [InlineData("Tom's \"big\" bench \\ # [x]")]
    [InlineData("Hörnchen 2")]
    public void Any_title_can_be_written(string title) => Assert.Equal(title, FirstBench.Of(title, Usual).File?.Plan?.Title);

    [Theory]
    [InlineData("")]
    [InlineData("line\nbreak")]
    public void A_title_is_one_line(string title) => Assert.Throws<ArgumentException>(() => FirstBench.Of(title, Usual));

    private static Gen<double> Evenly(double lowest, double highest) => Gen.Double.Unit.Select(share => lowest * Math.Pow(highest / lowest, share));

    private static BenchFile Made(BenchWish wish)
    {
        FirstBench bench = FirstBench.Of("Mine", wish);
        Assert.True(bench.IsFound, bench.Obstacle?.Why);
        return bench.File;
    }

    private static IEnumerable<string> Spoiling(BenchPlan plan) =>
        BenchFindings.Of(plan).Where(finding => finding.Severity == Severity.Spoils).Select(finding => finding.Wrong);
}
