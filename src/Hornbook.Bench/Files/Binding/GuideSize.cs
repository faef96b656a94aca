using Hornbook.Physics.Guides;

namespace Hornbook.Bench.Files.Binding;

/// <summary>The inside dimensions of a guide given by name or by size.</summary>
internal static class GuideSize
{
    /// <summary>Width and height [m] of the guide of an antenna that states one; NaN for a part that is wrong.</summary>
    internal static (double Width, double Height) Of(BoundTable antenna)
    {
        if (antenna.Table("guide") is BoundTable size)
        {
            return (size.Number("width", double.NaN), size.Number("height", double.NaN));
        }

        RectangularGuide guide = StandardGuides.Find(antenna.Text("guide"))!.Guide;
        return (guide.Width, guide.Height);
    }
}
