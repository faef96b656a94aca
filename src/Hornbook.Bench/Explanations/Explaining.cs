namespace Hornbook.Bench.Explanations;

/// <summary>The explanations of all numbers.</summary>
public static class Explaining
{
    /// <summary>Explains a number.</summary>
    /// <param name="topic">Which.</param>
    /// <param name="bench">Where.</param>
    public static Explanation Of(ExplanationTopic topic, ExplainedBench bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return topic switch
        {
            ExplanationTopic.Link => LinkExplanations.Link(bench),
            ExplanationTopic.Ripple => LinkExplanations.Ripple(bench),
            ExplanationTopic.Received => LinkExplanations.Received(bench),
            ExplanationTopic.TableBounce => BounceExplanation.Of(bench),
            ExplanationTopic.Detector => DetectorExplanation.Of(bench),
            ExplanationTopic.Amplifier => ToneExplanations.Amplifier(bench),
            ExplanationTopic.Tone => ToneExplanations.Tone(bench),
            ExplanationTopic.Steps => ToneExplanations.Steps(bench),
            ExplanationTopic.Gain => AntennaExplanations.Gain(bench),
            ExplanationTopic.BeamWidth => AntennaExplanations.BeamWidth(bench),
            ExplanationTopic.FarZone => AntennaExplanations.FarZone(bench),
            ExplanationTopic.KeepOut => KeepOutExplanation.Of(bench),
            _ => throw new ArgumentOutOfRangeException(nameof(topic), topic, $"topic = {topic}; must be one of the topics"),
        };
    }
}
