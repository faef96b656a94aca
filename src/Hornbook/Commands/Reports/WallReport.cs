using Hornbook.Physics.Antennas.Choosing;

namespace Hornbook.Commands.Reports;

/// <summary>A trapezoid to be cut: the edges at throat and mouth, the distance between them, and where it lies on the sheet.</summary>
internal sealed record WallReport(double ThroatEdgeM, double MouthEdgeM, double SlantM, double CentreM, double BaseM, bool Turned)
{
    internal static WallReport Of(PlacedWall placed) =>
        new(placed.Wall.Throat, placed.Wall.Mouth, placed.Wall.Height, placed.Centre, placed.Base, placed.Turned);
}
