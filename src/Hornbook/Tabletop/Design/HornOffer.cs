using Hornbook.Commands.Reports;
using Hornbook.Physics.Antennas.Choosing;

namespace Hornbook.Tabletop.Design;

/// <summary>A horn that is offered.</summary>
/// <param name="Why">What speaks for it.</param>
/// <param name="Figures">In whole steps, with what it then does.</param>
public sealed record OfferedHorn(string Why, HornFigures Figures);

/// <summary>What is offered for a wish.</summary>
/// <param name="Refusal">Why the wish itself is not granted; null where it is.</param>
/// <param name="Horns">Horns to choose from, the wished one first; without it those of other lengths.</param>
public sealed record HornOffer(string? Refusal, IReadOnlyList<OfferedHorn> Horns)
{
    private const int Lengths = 5;

    /// <summary>Looks for horns; what is wished first, then the best of other lengths.</summary>
    /// <param name="question">The wish and the frequency of the bench [Hz].</param>
    /// <param name="progress">Told the share done.</param>
    /// <param name="cancellation">Ends it.</param>
    public static HornOffer Of((HornDraft Draft, double Frequency) question, IProgress<double> progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(progress);
        HornDraft draft = question.Draft;
        Feed feed = draft.Feed(question.Frequency);
        HornChoice choice = draft.Granted(feed);
        progress.Report(0.5);
        cancellation.ThrowIfCancellationRequested();
        string? refusal = choice.Refusal is { } refused ? RefusalReport.Of(refused).Sentence : null;
        OfferedHorn? wished = choice.Figures is { } figures && figures.Horn.Length <= draft.Longest ? new OfferedHorn("as wished", Cut(draft, choice)) : null;
        refusal ??= wished is null ? FormattableString.Invariant($"It would be {choice.Figures!.Horn.Length * 100.0:0.0} cm long, and {draft.LongestCm:0.#} cm are allowed.") : null;
        return new HornOffer(refusal, [.. wished is null ? Array.Empty<OfferedHorn>() : [wished], .. Others(draft, feed, choice.Figures).Where(other => other.Figures.Horn != wished?.Figures.Horn)]);
    }

    // A horn that fills a sheet may not grow.
    private static HornFigures Cut(HornDraft draft, HornChoice choice) =>
        choice.Figures!.Rounded(draft.Step, choice.Layout is null ? MidpointRounding.ToEven : MidpointRounding.ToZero);

    /// <summary>From half the wished length to twice, as far as is allowed.</summary>
    private static IEnumerable<OfferedHorn> Others(HornDraft draft, Feed feed, HornFigures? wished)
    {
        double most = Math.Min(draft.Longest, HornWish.LongestInWaves * feed.Wavelength);
        double longest = Math.Min(most, 2.0 * (wished?.Horn.Length ?? most));
        double shortest = Math.Min(longest, Math.Max(HornWish.ShortestInWaves * feed.Wavelength, 0.25 * longest));
        return TradeCurve.Of(feed, shortest, longest, Lengths).Select(figures => new OfferedHorn("most gain of its length", figures.Rounded(draft.Step))).Reverse();
    }
}
