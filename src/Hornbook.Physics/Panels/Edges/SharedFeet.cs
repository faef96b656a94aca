using Hornbook.Physics.Panels.Outlines;

namespace Hornbook.Physics.Panels.Edges;

/// <summary>Feet that lie in the same stretch of a rim, as one.</summary>
/// <param name="length">Of a stretch [m]; &gt; 0.</param>
internal sealed class SharedFeet(double length)
{
    private readonly Dictionary<(Rim Rim, long X, long Y, long Z), int> _numbers = [];
    private readonly List<Rim> _rims = [];

    /// <summary>The shared feet.</summary>
    internal List<RimFoot> Feet { get; } = [];

    /// <summary>The feet so far, with their rims.</summary>
    internal (Rim Rim, RimFoot Foot)[] Used => [.. _rims.Zip(Feet)];

    /// <summary>The index of the shared foot of a foot, and how far it lies ahead of that along inward × front normal [m].</summary>
    internal (int Index, double Ahead) Share(Rim rim, RimFoot foot)
    {
        (Rim, long, long, long) stretch = (rim, Number(foot.Place.X), Number(foot.Place.Y), Number(foot.Place.Z));
        if (!_numbers.TryGetValue(stretch, out int index))
        {
            index = Feet.Count;
            _numbers.Add(stretch, index);
            Feet.Add(foot);
            _rims.Add(rim);
        }

        RimFoot shared = Feet[index];
        return (index, Vector.Dot(foot.Place - shared.Place, Vector.Cross(shared.Inward, shared.Normal)));
    }

    // Off by an odd share: feet on round numbers of the site's length must not fall to either side by a rounding error.
    private long Number(double place) => (long)Math.Floor((place / length) + 0.1234567);
}
