using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;

namespace Hornbook.Physics.Antennas;

/// <summary>A guide that simply ends, cut square.</summary>
public sealed record OpenGuide : AntennaShape
{
    /// <summary>An open end.</summary>
    /// <param name="guide">The guide.</param>
    /// <param name="walls">What its walls are made of.</param>
    public OpenGuide(RectangularGuide guide, Conductor walls)
        : base(guide, walls)
    {
    }

    /// <inheritdoc/>
    public override double MouthWidth => Guide.Width;

    /// <inheritdoc/>
    public override double MouthHeight => Guide.Height;
}
