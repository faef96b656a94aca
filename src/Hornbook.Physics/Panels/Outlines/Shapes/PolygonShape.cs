using System.Globalization;

namespace Hornbook.Physics.Panels.Outlines.Shapes;

/// <summary>A polygon whose sides do not meet but at its corners.</summary>
public sealed class PolygonShape : CorneredShape
{
    /// <summary>A polygon through its corners, either way round.</summary>
    /// <param name="corners">Own y and z of each [m], in order, the first not repeated; finite; three or more.</param>
    /// <exception cref="ArgumentException">There are fewer than three corners, or sides touch or cross.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite.</exception>
    public PolygonShape(IReadOnlyList<(double Y, double Z)> corners)
        : base(Checked(corners))
    {
        if (!Area.IsValid || !(Area.Area > 0.0))
        {
            throw new ArgumentException("corners: sides touch or cross; must be the corners of a simple polygon in order", nameof(corners));
        }
    }

    private static Vector[] Checked(IReadOnlyList<(double Y, double Z)> corners)
    {
        ArgumentNullException.ThrowIfNull(corners);
        return corners.Count >= 3
            ? [.. corners.Select(corner => new Vector(0.0, Require.Finite(corner.Y), Require.Finite(corner.Z)))]
            : throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"corners = {corners.Count} of them; must be 3 or more"), nameof(corners));
    }
}
