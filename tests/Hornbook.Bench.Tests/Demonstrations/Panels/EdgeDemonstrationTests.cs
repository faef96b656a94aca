using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations.Panels;

[Trait("Cost", "Slow")]
public sealed class EdgeDemonstrationTests
{
    // Nearer to the receiver, so that the first bright stripe lies well inside the horn's beam; its right-hand edge on the axis.
    private static readonly BenchPlan Plan = WaveBench.With(new RectangularSurface(0.5, 0.7), 0.9, 1.2, new Pose(new Vector(0.0, 0.25, 0.0)));
    private static readonly EdgeDemonstration Edge = new("edge", "plate", 0.16, -0.1, 53);
    private static readonly Prediction Prediction = Prediction.Of(Scene.Of(Plan), Edge, cancellation: CancellationToken.None);

    [Theory]
    [InlineData(0.0, -6.021)] // [BornWolf1999] § 8.7: one quarter
    [InlineData(1.0, -13.864)] // derived: from tables of Fresnel's integrals
    [InlineData(2.0, -19.091)] // derived: the same
    [InlineData(-1.2172, 1.368)] // [BornWolf1999] § 8.7: 1.37 of the power
    public void Fresnels_law_has_the_values_of_the_books(double v, double levelDb) =>
        Close.Absolute(levelDb, Decibels.FromRatio(KnifeEdge.Power(v)), 2e-3); // as many digits as the tables have

    [Fact]
    public void The_plate_moves_across_and_touches_the_line_of_sight_at_its_own_place()
    {
        Setting there = Edge.Course(Plan).First(setting => Math.Abs(setting.At) < 1e-9);

        Close.Absolute(0.0, KnifeEdge.Parameter(there.Panels[0], there, WaveBench.Wavelength), 1e-6);
        Assert.All(Edge.Course(Plan), setting => Close.Absolute(0.25 + setting.At, setting.Panels[0].Pose.Position.Y, 1e-12));
    }

    [Fact]
    public void The_parameter_is_that_of_the_books_near_the_axis()
    {
        Setting lit = Edge.Course(Plan).First(setting => Math.Abs(setting.At - 0.03) < 1e-9);

        // derived: v = −h √(2(a + b)/λab), to second order in h/a
        Close.Relative(-0.03 * Math.Sqrt(2.0 * 1.2 / (WaveBench.Wavelength * 0.9 * 0.3)), KnifeEdge.Parameter(lit.Panels[0], lit, WaveBench.Wavelength), 5e-3);
    }

    [Fact]
    public void A_quarter_of_the_power_is_left_on_the_line_of_sight_and_more_than_all_before_it()
    {
        // [BornWolf1999]: one quarter, and 1.37 at the first maximum; both within 0.15 dB
        Close.Absolute(-6.021, Prediction.Shown("on the line of sight").OnBench!.Value, 0.15);
        Close.Absolute(1.368, Prediction.Shown("brightest").OnBench!.Value, 0.15);
        Close.Absolute(KnifeEdge.FirstMaximumAt, Prediction.Shown("brightest at v").OnBench!.Value, 0.15);
    }

    [Fact]
    public void The_curve_follows_Fresnels_law_on_the_lit_side()
    {
        IReadOnlyList<double> law = ((LawEvaluation)Prediction.Evaluation).Law!;
        double[] offDb = [.. Prediction.Curve.Points
            .Select((point, i) => (point.Setting.At, Off: Decibels.FromRatio(point.Reading.Link / law[i])))
            .Where(point => point.At is > -0.015 and < 0.16).Select(point => Math.Abs(point.Off))];

        // derived: the horn sends 1 dB less to the edge at the end of this stretch than along the axis.
        Assert.True(offDb.Max() < 0.6, $"{offDb.Max()} dB");
    }

    [Fact]
    public void The_sentence_and_the_lesson_are_whole()
    {
        Assert.Contains("does not fall at once", Prediction.Heard, StringComparison.Ordinal);
        WaveBench.IsWhole(Edge.Lesson(Plan));
    }
}
