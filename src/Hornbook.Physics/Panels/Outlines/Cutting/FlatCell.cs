namespace Hornbook.Physics.Panels.Outlines.Cutting;

/// <summary>Cells in the plane x = 0.</summary>
internal static class FlatCell
{
    private static readonly Vector Front = new(1.0, 0.0, 0.0);
    private static readonly Vector Left = new(0.0, 1.0, 0.0);

    internal static Cell At(double y, double z, double area) => new(new Vector(0.0, y, z), Front, Left, area);
}
