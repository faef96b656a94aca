using Hornbook.Physics;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Choosing;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Tabletop.Design;

/// <summary>A wish for a grid as it is typed, in the units of its form.</summary>
public sealed record GridDraft
{
    private const double Millimetre = 1e-3;

    /// <summary>Whether round wires are wished, else flat strips.</summary>
    public bool Wires { get; init; }

    /// <summary>What the strips are on, by name; empty for air.</summary>
    public string Board { get; init; } = string.Empty;

    public double BoardMm { get; init; } = 0.8;

    public double LeakDb { get; init; } = -25.0;

    public double LossDb { get; init; } = -0.2;

    public double LeastMetalMm { get; init; } = 0.5;

    public double LeastGapMm { get; init; } = 0.5;

    public double StepMm { get; init; } = 0.1;

    public double SlantDeg { get; init; } = 45.0;

    /// <summary>What is wished, at the frequency of the bench [Hz].</summary>
    public GridWish Wish(double frequency) =>
        new(frequency, Decibels.ToRatio(LeakDb), Decibels.ToRatio(LossDb), LeastMetalMm * Millimetre, LeastGapMm * Millimetre)
        {
            Step = StepMm * Millimetre,
            OneWaveUpTo = SlantDeg * Math.PI / 180.0,
        };

    /// <summary>How it is made.</summary>
    public GridMake Make => (Wires, Dielectrics.Find(Board)) switch
    {
        (true, _) => new WireMake(),
        (false, { } material) => new StripMake(new LayeredSheet(new Layer(material, BoardMm * Millimetre))),
        _ => new StripMake(),
    };
}

/// <summary>A wish for a grid and what was found for it.</summary>
/// <param name="Wish">What was wished.</param>
/// <param name="Choices">What there is.</param>
public sealed record GridOffer(GridWish Wish, GridChoices Choices)
{
    public static GridOffer Of((GridDraft Draft, double Frequency) question, IProgress<double> progress, CancellationToken cancellation)
    {
        GridWish wish = question.Draft.Wish(question.Frequency);
        return new GridOffer(wish, GridSearch.For(wish, question.Draft.Make, progress, cancellation));
    }
}
