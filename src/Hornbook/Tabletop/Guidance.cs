using Hornbook.Bench.Explanations;
using Hornbook.Tabletop.Views;

namespace Hornbook.Tabletop;

/// <summary>Where on the page stands what helps with a finding that no button mends: hands, a measurement or the law have to.</summary>
/// <param name="Text">As a visitor reads it.</param>
/// <param name="Topic">The explanation that opens; null where it is a view.</param>
/// <param name="View">The view to go to; null where it is an explanation.</param>
public sealed record Guidance(string Text, ExplanationTopic? Topic, View? View)
{
    // The formulas and the detector are explained in place; what is to be built or kept away from has a view of its own.
    private static readonly Guidance Safety = To("To Safety", "safety");
    private static readonly Guidance Antennas = To("To Antennas, to design another", "antennas");

    private static readonly Dictionary<string, Guidance> ByFinding = new(StringComparer.Ordinal)
    {
        ["emission"] = Safety,
        ["edge-inside-keep-out"] = Safety,
        ["edge-swept"] = Safety,
        ["receiver-inside-keep-out"] = Safety,
        ["worst-case-not-stated"] = Safety,
        ["exposure-limit-unknown"] = Safety,
        ["guide-below-cutoff"] = Antennas,
        ["guide-overmoded"] = Antennas,
        ["guide-outside-band"] = Antennas,
        ["half-power-not-reached"] = Antennas,
        ["gain-misread"] = Antennas,
        ["near-zone"] = Why("How the near zone is found", ExplanationTopic.FarZone),
        ["distance-law-bent"] = Why("How the near zone is found", ExplanationTopic.FarZone),
        ["standing-waves"] = Why("How standing waves are counted", ExplanationTopic.Ripple),
        ["not-trusted"] = Why("How the link is predicted", ExplanationTopic.Link),
        ["table-bounce"] = Why("How the table's bounce is found", ExplanationTopic.TableBounce),
        ["detector-beyond-law"] = Why("How the detector is known", ExplanationTopic.Detector),
        ["detector-below-law"] = Why("How the detector is known", ExplanationTopic.Detector),
        ["tone-drowned"] = Why("What makes the power that arrives", ExplanationTopic.Received),
        ["demonstration-drowned"] = Why("What makes the power that arrives", ExplanationTopic.Received),
        ["pitch-range-small"] = Why("How volts become a tone", ExplanationTopic.Tone),
    };

    /// <summary>The findings that have such a place.</summary>
    public static IReadOnlyCollection<string> Findings => ByFinding.Keys;

    /// <summary>The place for a finding; null where there is none.</summary>
    public static Guidance? For(string finding) => ByFinding.GetValueOrDefault(finding);

    private static Guidance Why(string text, ExplanationTopic topic) => new(text, topic, null);

    private static Guidance To(string text, string address) => new(text, null, View.All.Single(view => view.Address == address));
}
