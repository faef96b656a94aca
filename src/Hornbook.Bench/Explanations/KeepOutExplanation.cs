using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Physics.Exposure;

namespace Hornbook.Bench.Explanations;

/// <summary>How far people have to stay away.</summary>
internal static class KeepOutExplanation
{
    internal static Explanation Of(ExplainedBench bench) => ChosenLimit.Of(bench.Plan) is ExposureLimit limit ? Of(bench, limit) : Unknown(bench);

    private static Explanation Of(ExplainedBench bench, ExposureLimit limit)
    {
        ExposureField field = ExposureField.Of(bench.Sending, bench.Source.WorstCasePower);
        double density = limit.PowerDensity(bench.Plan.Frequency);
        double distance = KeepOut.OnAxis(field, density);
        string most = InWords.Power(bench.Source.WorstCasePower);
        return new Explanation(
            "The keep-out distance",
            "Before the source's mouth, this far away, the wave has thinned to what the chosen limit allows.",
            "S(r) = S₀,   S = max(|E|²/2η, η|H|²/2, |½ Re E × H*|)",
            [$"S({InWords.Length(distance)}) = {InWords.Rounded(density, 3)} W/m² with {most}", $"in the mouth itself: {InWords.Rounded(field.AtMouth, 2)} W/m²"],
            [
                new("S₀", $"{limit.Title}, {limit.Instrument}", $"{InWords.Rounded(density, 3)} W/m²"),
                new("P", "the most that the source can give, not what it gives now", most),
            ],
            "In front of the mouth, near zone counted. Beyond 60° off the axis it is never given less than at 60°.",
            "From dimensions and power as typed in; nothing has been measured. Rules differ by country, and the local code and a licensed practitioner decide.",
            []);
    }

    private static Explanation Unknown(ExplainedBench bench) => new(
        "The keep-out distance",
        $"No limit is known here for {InWords.Frequency(bench.Plan.Frequency)}.",
        "S(r) = S₀",
        [],
        [],
        "Nowhere, before a limit is found.",
        "Look up the limit that holds where the bench is shown.",
        []);
}
