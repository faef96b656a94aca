namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>A panel on the sheet.</summary>
/// <param name="Panel">The panel.</param>
/// <param name="Centre">Place of its middle line along the row [m].</param>
/// <param name="Base">Place of its lower edge across the row [m].</param>
/// <param name="Turned">False: the mouth edge lies below; true: turned end for end, the throat edge lies below.</param>
public sealed record PlacedPanel(Panel Panel, double Centre, double Base, bool Turned)
{
    /// <summary>Its four corners on the sheet, along and across the rows [m], counter-clockwise from the lower left one.</summary>
    public IReadOnlyList<(double Along, double Across)> Corners
    {
        get
        {
            double below = HalfWidth(0.0), above = HalfWidth(Panel.Height), top = Base + Panel.Height;
            return [(Centre - below, Base), (Centre + below, Base), (Centre + above, top), (Centre - above, top)];
        }
    }

    /// <summary>Half of its width at a height above its lower edge [m].</summary>
    internal double HalfWidth(double height)
    {
        double share = height / Panel.Height;
        (double below, double above) = Turned ? (Panel.Throat, Panel.Mouth) : (Panel.Mouth, Panel.Throat);
        return 0.5 * (below + ((above - below) * share));
    }
}
