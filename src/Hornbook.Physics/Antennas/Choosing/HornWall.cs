namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>One wall of a pyramidal horn, laid flat: a trapezoid with equal legs.</summary>
/// <param name="Throat">Edge at the guide [m], seam allowance included.</param>
/// <param name="Mouth">Edge at the mouth [m], seam allowance included.</param>
/// <param name="Height">Distance between these edges, the slant length of the wall [m].</param>
public sealed record HornWall(double Throat, double Mouth, double Height)
{
    /// <summary>Top or bottom of a horn, with the seam strips on its slanted edges.</summary>
    /// <param name="horn">The horn; inside dimensions, the sheet's thickness is neglected.</param>
    /// <param name="seam">Width of each strip, square to the edge [m]; ≥ 0.</param>
    public static HornWall Broad(Horn horn, double seam)
    {
        ArgumentNullException.ThrowIfNull(horn);
        double height = Slant(horn.Length, horn.MouthHeight - horn.Guide.Height);
        double slope = 0.5 * (horn.MouthWidth - horn.Guide.Width) / height;
        double added = 2.0 * Require.NotNegative(seam) * Math.Sqrt(1.0 + (slope * slope));
        return new HornWall(horn.Guide.Width + added, horn.MouthWidth + added, height);
    }

    /// <summary>Left or right side of a horn; the seam strips are on the others.</summary>
    /// <param name="horn">The horn; inside dimensions, the sheet's thickness is neglected.</param>
    public static HornWall Side(Horn horn)
    {
        ArgumentNullException.ThrowIfNull(horn);
        return new HornWall(horn.Guide.Height, horn.MouthHeight, Slant(horn.Length, horn.MouthWidth - horn.Guide.Width));
    }

    private static double Slant(double length, double opening) => Math.Sqrt((length * length) + (0.25 * opening * opening));
}
