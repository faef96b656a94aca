namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>A wall on the sheet.</summary>
/// <param name="Wall">The wall.</param>
/// <param name="Centre">Place of its middle line along the row [m].</param>
/// <param name="Base">Place of its lower edge across the row [m].</param>
/// <param name="Turned">False: the mouth edge lies below; true: turned end for end, the throat edge lies below.</param>
public sealed record PlacedWall(HornWall Wall, double Centre, double Base, bool Turned)
{
    /// <summary>Its four corners on the sheet, along and across the rows [m], counter-clockwise from the lower left one.</summary>
    public IReadOnlyList<(double Along, double Across)> Corners
    {
        get
        {
            double below = HalfWidth(0.0), above = HalfWidth(Wall.Height), top = Base + Wall.Height;
            return [(Centre - below, Base), (Centre + below, Base), (Centre + above, top), (Centre - above, top)];
        }
    }

    /// <summary>Half of its width at a height above its lower edge [m].</summary>
    internal double HalfWidth(double height)
    {
        double share = height / Wall.Height;
        (double below, double above) = Turned ? (Wall.Throat, Wall.Mouth) : (Wall.Mouth, Wall.Throat);
        return 0.5 * (below + ((above - below) * share));
    }
}
