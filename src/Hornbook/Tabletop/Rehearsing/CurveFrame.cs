using System.Globalization;
using Hornbook.Bench.Demonstrations;
using Hornbook.Physics.Detection;
using Hornbook.Tabletop.Sheets;

namespace Hornbook.Tabletop.Rehearsing;

/// <summary>A predicted curve laid out in the units of its drawing: along what is changed, upwards in octaves of the tone.</summary>
internal sealed class CurveFrame
{
    internal const double Width = 640.0;
    internal const double Height = 260.0;
    internal const double Left = 52.0;
    internal const double Right = 630.0;
    internal const double Top = 8.0;
    internal const double Bottom = 226.0;

    // So that a tone that hardly changes is not drawn as a storm.
    private const double LeastOctaves = 1.0;

    private readonly Curve _curve;
    private readonly double _low;
    private readonly double _high;

    private CurveFrame(Curve curve, IReadOnlyList<double> lawTones)
    {
        _curve = curve;
        double[] tones = [.. curve.Points.SelectMany(p => new[] { p.Lower.Tone, p.Reading.Heard.Tone, p.Upper.Tone })];
        double low = Math.Log2(tones.Min()), high = Math.Log2(tones.Max()), lacking = Math.Max(0.0, LeastOctaves - (high - low));
        (_low, _high) = (low - (0.5 * lacking), high + (0.5 * lacking));
        Law = lawTones.Count == 0 ? null : Points(lawTones);
        Line = Points([.. curve.Points.Select(p => p.Reading.Heard.Tone)]);
        Band = $"{Points([.. curve.Points.Select(p => p.Upper.Tone)])} {string.Join(' ', Points([.. curve.Points.Select(p => p.Lower.Tone)]).Split(' ').Reverse())}";
    }

    /// <summary>The tone predicted, as the points of a line.</summary>
    internal string Line { get; }

    /// <summary>The band around it, as the points of an area.</summary>
    internal string Band { get; }

    /// <summary>The tone that the law of the books would give; null without one.</summary>
    internal string? Law { get; }

    /// <summary>Whether one thing follows another with nothing between them.</summary>
    internal bool IsStepwise => _curve.Points.Any(point => point.Setting.Label.Length > 0);

    /// <summary>The C of each octave that is seen, and its height.</summary>
    internal IEnumerable<(string Name, double Y)> Octaves => Enumerable.Range(0, 11)
        .Select(octave => new Note(12 * (octave + 1), 0.0)).Select(c => (c.Name, Y: Y(c.Frequency))).Where(c => c.Y is > Top - 1.0 and < Bottom + 1.0);

    /// <summary>The points of a stepwise curve, with their names.</summary>
    internal IEnumerable<(double X, double Y, string Name)> Steps => _curve.Points.Select((p, i) => (X(i), Y(p.Reading.Heard.Tone), p.Setting.Label));

    /// <summary>What stands below: the names of steps, or where it begins, its middle and its end.</summary>
    internal IEnumerable<(double X, string Words, string Anchor)> Abscissas
    {
        get
        {
            int last = _curve.Points.Count - 1;
            int[] told = IsStepwise ? [.. Enumerable.Range(0, last + 1)] : [0, last / 2, last];
            return told.Select(i => (X(i), SettingText.Of(_curve, _curve.Points[i]), i == 0 && !IsStepwise ? "start" : i == last && !IsStepwise ? "end" : "middle"));
        }
    }

    internal static CurveFrame Of(Prediction prediction, DetectionChain? detection)
    {
        IReadOnlyList<double> law = prediction.Evaluation is LawEvaluation { Law: { } links } && detection is not null
            ? [.. links.Zip(prediction.Curve.Points, (link, point) => detection.Hear(link * point.Setting.Source.Power).Tone)]
            : [];
        return new CurveFrame(prediction.Curve, law);
    }

    /// <summary>Across the drawing, of a place counted in points.</summary>
    internal double X(double place)
    {
        int last = Math.Max(1, _curve.Points.Count - 1);
        double inset = IsStepwise ? 0.5 * (Right - Left) / (last + 1) : 0.0;
        return Left + inset + (place / last * (Right - Left - (2.0 * inset)));
    }

    /// <summary>Down the drawing, of a tone [Hz].</summary>
    internal double Y(double tone) => Math.Clamp(Bottom - ((Math.Log2(tone) - _low) / (_high - _low) * (Bottom - Top)), Top - 2.0, Bottom + 2.0);

    private string Points(IReadOnlyList<double> tones) =>
        string.Join(' ', tones.Select((tone, i) => string.Create(CultureInfo.InvariantCulture, $"{SvgText.Number(X(i))},{SvgText.Number(Y(tone))}")));
}
