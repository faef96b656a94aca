using Hornbook.Physics.Guides;

namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>How far a built horn is from its drawing, one number for each dimension [m].</summary>
/// <param name="MouthWidth">Of A.</param>
/// <param name="MouthHeight">Of B.</param>
/// <param name="Length">Of L.</param>
/// <param name="GuideWidth">Of a.</param>
/// <param name="GuideHeight">Of b.</param>
internal readonly record struct HornErrors(double MouthWidth, double MouthHeight, double Length, double GuideWidth, double GuideHeight)
{
    /// <summary>An error in one dimension alone.</summary>
    internal static HornErrors In(HornDimension dimension, double error) => dimension switch
    {
        HornDimension.MouthWidth => new HornErrors(error, 0.0, 0.0, 0.0, 0.0),
        HornDimension.MouthHeight => new HornErrors(0.0, error, 0.0, 0.0, 0.0),
        HornDimension.Length => new HornErrors(0.0, 0.0, error, 0.0, 0.0),
        HornDimension.GuideWidth => new HornErrors(0.0, 0.0, 0.0, error, 0.0),
        _ => new HornErrors(0.0, 0.0, 0.0, 0.0, error),
    };

    /// <summary>The horn as built. A side that does not flare stays the guide's own; one that hardly flares does not become narrower than the guide.</summary>
    internal Horn Applied(Horn drawn)
    {
        RectangularGuide guide = new(drawn.Guide.Width + GuideWidth, drawn.Guide.Height + GuideHeight);
        return new Horn(
            guide,
            Side(drawn.MouthWidth, drawn.Guide.Width, guide.Width, MouthWidth),
            Side(drawn.MouthHeight, drawn.Guide.Height, guide.Height, MouthHeight),
            drawn.Length + Length,
            drawn.Walls);
    }

    private static double Side(double drawn, double drawnThroat, double throat, double error) =>
        drawn > drawnThroat ? Math.Max(throat, drawn + error) : throat;
}
