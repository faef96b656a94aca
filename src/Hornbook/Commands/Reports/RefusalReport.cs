using Hornbook.Commands.Printing;
using Hornbook.Physics;
using Hornbook.Physics.Antennas.Choosing;

namespace Hornbook.Commands.Reports;

/// <summary>Why a wish cannot be met.</summary>
internal sealed record RefusalReport(WishProblem Problem, string Sentence)
{
    internal static RefusalReport Of(WishRefusal refusal) => new(refusal.Problem, refusal.Problem switch
    {
        WishProblem.GainBelowOpenGuide => $"A guide cut square has {Gain(refusal.Limit)} already: no horn is needed for {Gain(refusal.Wanted)}.",
        WishProblem.GainTooHigh => $"{Gain(refusal.Wanted)} needs a horn longer than {HornWish.LongestInWaves:F0} wavelengths; the longest offered has {Gain(refusal.Limit)}. Take a dish.",
        WishProblem.BeamTooWideE => $"No flare makes the beam {Show.Degrees(refusal.Wanted)} wide in the E plane; the widest is {Show.Degrees(refusal.Limit)}.",
        WishProblem.BeamTooWideH => $"No flare makes the beam {Show.Degrees(refusal.Wanted)} wide in the H plane; the widest is {Show.Degrees(refusal.Limit)}.",
        WishProblem.BeamTooNarrowE => $"A beam {Show.Degrees(refusal.Wanted)} wide in the E plane needs a horn longer than {HornWish.LongestInWaves:F0} wavelengths; the narrowest offered is {Show.Degrees(refusal.Limit)}.",
        WishProblem.BeamTooNarrowH => $"A beam {Show.Degrees(refusal.Wanted)} wide in the H plane needs a horn longer than {HornWish.LongestInWaves:F0} wavelengths; the narrowest offered is {Show.Degrees(refusal.Limit)}.",
        _ => $"Nothing useful can be cut from so small a sheet: four panels around the guide alone take a strip of {Show.Length(refusal.Limit)}.",
    });

    private static string Gain(double gain) => Show.Db(Decibels.FromRatio(gain), "dBi");
}
