using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Physics.Guides;

namespace Hornbook.Bench.Findings;

/// <summary>Whether the guides suit the frequency.</summary>
internal static class GuideFindings
{
    /// <summary>Narrowest good guide in wavelengths: its cut-off, c/2a, lies at 1/1.25 of the frequency.</summary>
    private const double Narrowest = 1.25 / 2.0;

    /// <summary>Widest good guide in wavelengths: the frequency is 1.9 times its cut-off, the next mode begins at 2.</summary>
    private const double Widest = 1.9 / 2.0;

    internal static IEnumerable<Finding> Of(BenchPlan plan) => plan.Antennas.SelectMany(antenna => Of(plan, antenna));

    private static IEnumerable<Finding> Of(BenchPlan plan, NamedAntenna antenna)
    {
        GuideWave wave = GuideWave.At(antenna.Shape.Guide, plan.Frequency);
        string at = InWords.Frequency(plan.Frequency);
        string guide = $"The guide of '{antenna.Name}' ({Size(wave.Guide)})";
        Severity worst = IsUsed(plan, antenna.Name) ? Severity.Spoils : Severity.Note;
        Mend mend = Mend(plan, antenna);
        return wave.Use switch
        {
            GuideUse.BelowCutoff => [new(worst, "guide-below-cutoff",
                $"{guide} carries no wave at {at}: its cut-off is {InWords.Frequency(wave.CutoffFrequency)}.",
                "The field dies out along the guide and nothing leaves the mouth; nothing can be predicted for it.", mend)],
            GuideUse.Overmoded => [new(Later(worst, Severity.Weakens), "guide-overmoded",
                $"{guide} carries more than one mode at {at}: {wave.NextMode.Name} begins at {InWords.Frequency(wave.NextMode.CutoffFrequency)}.",
                "What leaves the mouth depends on every joint and bend before it; the prediction holds only if TE10 alone is excited.", mend)],
            GuideUse.OutsideRecommendedBand => [new(Severity.Note, "guide-outside-band",
                $"{guide} is meant for {InWords.Frequency(wave.RecommendedBand.Lowest)} to {InWords.Frequency(wave.RecommendedBand.Highest)}, not {at}.",
                plan.Frequency < wave.RecommendedBand.Lowest
                    ? "So near its cut-off its wavelength and loss change fast with frequency, and joints reflect more."
                    : "So near the next mode a bend or a probe is felt although that mode does not travel.", mend)],
            _ => [],
        };
    }

    private static Mend Mend(BenchPlan plan, NamedAntenna antenna) => StandardGuides.For(plan.Frequency) is [StandardGuide first, ..]
        ? new Mend($"Build '{antenna.Name}' on {first.Name}.", $"antennas.{antenna.Name}.guide", first.Name)
        : new Mend($"Build '{antenna.Name}' on a guide {InWords.Length(Narrowest * Wavelength(plan))} to {InWords.Length(Widest * Wavelength(plan))} wide.");

    private static double Wavelength(BenchPlan plan) => Physics.FreeSpace.Wavelength(plan.Frequency);

    private static bool IsUsed(BenchPlan plan, string antenna) => plan.Source.Antenna == antenna || plan.Receiver.Antenna == antenna
        || plan.Demonstrations.OfType<AntennaChangeDemonstration>().Any(d => d.Antennas.Contains(antenna));

    private static Severity Later(Severity a, Severity b) => a > b ? a : b;

    private static string Size(RectangularGuide guide) => StandardGuides.Matching(guide) is StandardGuide standard
        ? standard.Name
        : $"{InWords.Length(guide.Width)} by {InWords.Length(guide.Height)}";
}
