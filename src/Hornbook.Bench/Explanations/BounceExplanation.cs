using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Findings;

namespace Hornbook.Bench.Explanations;

/// <summary>The second wave by way of the table top.</summary>
internal static class BounceExplanation
{
    internal static Explanation Of(ExplainedBench bench)
    {
        TableBounce bounce = TableBounce.Of(bench.Scene, bench.Source, bench.Receiver);
        return new Explanation(
            "The table's bounce",
            "Part of the wave goes down to the table and up again to the receiver, a longer way: it adds to the straight one or takes from it.",
            "± 20 log₁₀ (1 + |R| · |S′| / |S|)",
            [
                $"wood: ± {InWords.Rounded(bounce.WoodDb, 2)} dB",
                $"metal: ± {InWords.Rounded(bounce.MetalDb, 2)} dB",
                $"first Fresnel zone: ½ √(λ r) = {InWords.Length(bounce.FresnelRadius)}; the table is {InWords.Length(bounce.Clearance)} below the line of sight",
            ],
            [
                new("S′ / S", "link amplitude from the source mirrored in the table, over the straight one; near zone and patterns counted", InWords.Rounded(bounce.Mirrored, 2)),
                new("|R|", "what wood returns at that angle, at the thickness that returns most; metal returns all", InWords.Rounded(bounce.Wood, 2)),
                new("λ", "wavelength", InWords.Length(bench.Wavelength)),
                new("r", "from mouth to mouth", InWords.Length(bench.Distance)),
            ],
            bench.Plan.Table.Panel is null
                ? "A bound for a bare table top, wide and long; the link leaves the table out."
                : "A bound for a bare table top, wide and long; the link computes this table's own make-up.",
            "At most this: real wood, its edge and what lies on it return less.",
            ["Balanis2016", "ItuP2040"]);
    }
}
