using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Physics;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations.Panels;

public sealed class BrewsterDemonstrationTests
{
    private const double Degree = Math.PI / 180.0;

    private static readonly BrewsterDemonstration Demonstration = new("brewster", "acrylic", 35.0 * Degree, 75.0 * Degree, 21) { Screen = "screen" };

    [Fact]
    public void The_fields_lie_in_the_plane_of_incidence_and_the_screen_halves_the_way() => Assert.All(Demonstration.Course(PanelBench.Plan), setting =>
    {
        Close.Absolute(0.0, setting.Source.Pose.Up.Z, 1e-15);
        Close.Absolute(0.0, setting.Receiver.Pose.Up.Z, 1e-15);
        Pose sheet = setting.Panels.Named("acrylic").Pose, screen = setting.Panels.Named("screen").Pose;
        Close.Absolute(0.0, Vector.Dot(sheet.Forward, screen.Forward), 1e-15);

        // derived: 8 cm clear and half of 300 mm along the sheet's normal.
        Close.Absolute(0.0, (screen.Position - sheet.Position - (sheet.Forward * 0.23)).Length, 1e-12);
    });

    [Fact]
    public void Without_a_screen_nothing_else_is_put_in() =>
        Assert.All((Demonstration with { Screen = null }).Course(PanelBench.Plan), setting => Assert.Single(setting.Panels, panel => panel.Stands));

    [Fact]
    [Trait("Cost", "Slow")]
    public void The_reflection_dies_away_at_the_angle_whose_tangent_is_the_refractive_index()
    {
        Prediction prediction = Predicting.Of(PanelBench.Plan, Demonstration);
        Comparison[] numbers = [.. Assert.IsType<LawEvaluation>(prediction.Evaluation).Comparisons];

        // D. Brewster: arctan √2.59; acrylic glass by A. R. von Hippel, Dielectric Materials and Applications, 1954, from memory.
        Close.Absolute(58.14, numbers[0].InBooks!.Value / Degree, 0.01);

        // Half a degree is left by the flanks, and one and a half by beams of some twenty degrees and a sheet of a few wavelengths.
        Close.Absolute(58.14, numbers[0].OnBench!.Value / Degree, 2.0);
        Assert.True(numbers[1].OnBench > 15.0);

        // derived: |r_s|² of a sheet a quarter wave thick is −2.7 dB there; what is left of r_p is lost among other ways.
        Assert.True(numbers[2].OnBench > 15.0);
        Assert.Contains("through", prediction.Heard, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2e-3)]
    [InlineData(5e-3)]
    [InlineData(9e-3)]
    public void Both_faces_of_an_endless_sheet_go_dark_at_the_same_angle_whatever_the_thickness(double thickness)
    {
        LayeredSheet sheet = new(new Layer(new LaboratoryDielectric("clear", 2.59, 0.0), thickness));
        double angle = Math.Atan(Math.Sqrt(2.59));
        Close.Absolute(0.0, sheet.At(10.525e9, angle, Polarisation.Within).Reflection.Magnitude, 1e-12);
        Assert.True(sheet.At(10.525e9, angle - 0.1, Polarisation.Within).Reflection.Magnitude > 0.01);
    }

    [Fact]
    public void The_thickness_that_returns_most_is_a_quarter_wave_inside()
    {
        Prediction prediction = Predicting.Of(PanelBench.Plan, Demonstration with { Points = 3, Screen = null });
        double best = Assert.IsType<LawEvaluation>(prediction.Evaluation).Comparisons[3].InBooks!.Value;

        // derived: k √(ε′ − sin²θ) d = π/2 at tan θ = √ε′.
        double angle = Math.Atan(Math.Sqrt(2.59));
        Close.Relative(0.25 * PanelBench.Wavelength / Math.Sqrt(2.59 - Math.Pow(Math.Sin(angle), 2.0)), best, 1e-12);
    }
}
