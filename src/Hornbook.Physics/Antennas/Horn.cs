using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;

namespace Hornbook.Physics.Antennas;

/// <summary>A pyramidal horn, or a sectoral one where one mouth dimension is the guide's own; both flares begin in one throat plane.</summary>
public sealed record Horn : AntennaShape
{
    /// <summary>A horn by the numbers that a builder cuts.</summary>
    /// <param name="guide">The guide that feeds it.</param>
    /// <param name="mouthWidth">Inside width of the mouth (H plane), A [m]; ≥ the guide's width.</param>
    /// <param name="mouthHeight">Inside height of the mouth (E plane), B [m]; ≥ the guide's height.</param>
    /// <param name="length">From the throat plane to the mouth plane along the axis, L [m]; finite, &gt; 0.</param>
    /// <param name="walls">What its walls are made of.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is out of its range.</exception>
    public Horn(RectangularGuide guide, double mouthWidth, double mouthHeight, double length, Conductor walls)
        : base(guide, walls)
    {
        MouthWidth = Require.Within(mouthWidth, guide.Width, double.MaxValue);
        MouthHeight = Require.Within(mouthHeight, guide.Height, double.MaxValue);
        Length = Require.Positive(length);
    }

    /// <inheritdoc/>
    public override double MouthWidth { get; }

    /// <inheritdoc/>
    public override double MouthHeight { get; }

    /// <summary>From the throat plane to the mouth plane along the axis, L [m].</summary>
    public double Length { get; }

    /// <summary>Apex of the H-plane flare to the mouth plane along the axis, ρ_H = L A/(A−a) [m]; +∞ where the H plane does not flare.</summary>
    public double AxialRadiusH => MouthWidth > Guide.Width ? Length * MouthWidth / (MouthWidth - Guide.Width) : double.PositiveInfinity;

    /// <summary>Apex of the E-plane flare to the mouth plane along the axis, ρ_E = L B/(B−b) [m]; +∞ where the E plane does not flare.</summary>
    public double AxialRadiusE => MouthHeight > Guide.Height ? Length * MouthHeight / (MouthHeight - Guide.Height) : double.PositiveInfinity;

    /// <summary>The inside of the flare at a distance from its throat: a guide of the local size.</summary>
    /// <param name="fromThroat">Distance from the throat along the axis [m]; 0 … length.</param>
    public RectangularGuide SectionAt(double fromThroat)
    {
        double share = Require.Within(fromThroat, 0.0, Length) / Length;
        return new RectangularGuide(
            Guide.Width + (share * (MouthWidth - Guide.Width)), Guide.Height + (share * (MouthHeight - Guide.Height)));
    }
}
