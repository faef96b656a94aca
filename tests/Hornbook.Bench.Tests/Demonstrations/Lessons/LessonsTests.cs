using System.Text.RegularExpressions;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Tests.Demonstrations.Panels;
using Hornbook.Physics.Media;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations.Lessons;

public sealed partial class LessonsTests
{
    private static readonly Dictionary<string, Demonstration> All = new Demonstration[]
    {
        GoodBench.BeamWidth,
        GoodBench.Gain,
        GoodBench.Distance,
        GoodBench.Polarisation,
        new GridTurnDemonstration("g", "strips", 0.0, 1.0, 3),
        new GridRevivalDemonstration("r", "strips", 0.0, 1.0, 3),
        new PanelChangeDemonstration("p", ["plate"]),
        new ClosedBoxDemonstration("c", "box"),
        new BrewsterDemonstration("b", "acrylic", 0.6, 1.2, 3),
        new HalfMirrorsDemonstration("h", "half-1", "half-2", 0.0, 0.03, 3),
        new CircularPolarisationDemonstration("o", "strips", "plate", 0.011, 0.3, 0.0, 1.0, 3),
        new GridGapDemonstration("w", "strips", "plate", 0.3, 0.004, 0.02, 3),
        new ReflectionDemonstration("m", "plate", 0.8, 1.0, 2.0, 3),
        new StandingWaveDemonstration("s", "plate", 0.1, 0.0, 0.06, 3),
        new SlitsDemonstration("t", "plate", -0.4, 0.4, 3),
        new EdgeDemonstration("e", "plate", 0.15, -0.1, 3),
        new LloydDemonstration("l", "plate", -0.05, 0.1, 3),
        new ZonePlateDemonstration("z", "plate", 0.3, 0.9, 3),
        new DishDemonstration("d", "plate", 0.08, 0.18, 3),
    }.ToDictionary(d => d.GetType().Name);

    public static TheoryData<string> Kinds => [.. All.Keys];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_demonstration_has_a_lesson_of_six_texts_in_whole_sentences(string kind)
    {
        string[] texts = TextsOf(All[kind].Lesson(PanelBench.Plan));
        Assert.All(texts, text => Assert.Matches(WholeSentences(), text));
        Assert.Equal(texts.Length, texts.Distinct().Count());
    }

    [Fact]
    public void None_is_missing_here() => Assert.Equal(
        typeof(Demonstration).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Demonstration)) && !type.IsAbstract).Select(type => type.Name).Order(), All.Keys.Order());

    [Fact]
    public void Lengths_in_them_are_those_of_the_bench()
    {
        BenchPlan twice = PanelBench.Plan with { Frequency = 2.0 * PanelBench.Plan.Frequency };

        // derived: λ = 28.48 mm at 10.525 GHz; half of it, an eighth, and the same at twice the frequency.
        Assert.Contains("1.42 cm", GoodBench.Distance.Lesson(PanelBench.Plan).Spoils, StringComparison.Ordinal);
        Assert.Contains("1.42 cm", All[nameof(HalfMirrorsDemonstration)].Lesson(PanelBench.Plan).WhyItFails, StringComparison.Ordinal);
        Assert.Contains("7.1 mm", All[nameof(HalfMirrorsDemonstration)].Lesson(twice).WhyItFails, StringComparison.Ordinal);
        Assert.Contains("3.6 mm", All[nameof(GridGapDemonstration)].Lesson(PanelBench.Plan).Stand, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_said_of_water_is_what_the_program_computes_with()
    {
        System.Numerics.Complex water = new Water(293.15).RelativePermittivity(10e9);

        // As said to the student: "about 30".
        Close.Absolute(30.0, -water.Imaginary, 3.0);

        // derived: 20 log10(e) k Im √ε over a millimetre; "several decibels".
        double fading = 8.686 * 2.0 * Math.PI / 0.02998 * 1e-3 * -System.Numerics.Complex.Sqrt(water).Imaginary;
        Assert.InRange(fading, 2.0, 5.0);
    }

    private static string[] TextsOf(Lesson lesson) =>
        [lesson.Stand, lesson.Spoils, lesson.WrongPicture, lesson.WhyItFails, lesson.ForAChild, lesson.ForAStudent];

    // Begins with a capital, says something, ends with a full stop; no blanks left over from joining.
    [GeneratedRegex(@"^\p{Lu}(?!.*(  | \.| ,)).{40,}\.$")]
    private static partial Regex WholeSentences();
}
