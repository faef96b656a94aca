using Hornbook.Physics;
using Hornbook.Physics.Exposure;

namespace Hornbook.Tabletop;

/// <summary>How far to stay away in every direction of a source, computed once on a grid so that it can be drawn in any pose.</summary>
/// <remarks>Between the directions of the grid it is interpolated: to draw with, not to rely on to the centimetre.</remarks>
public sealed class KeepOutShape
{
    private const double Degree = Math.PI / 180.0;
    private const double OffStep = 3.0 * Degree;
    private const double AzimuthStep = 15.0 * Degree;
    private const int OffCount = 61; // 0° to 180°
    private const int AzimuthCount = 7; // 0° to 90°: the mouth has two planes of symmetry

    private readonly double[,] _distances;

    private KeepOutShape(double[,] distances) => _distances = distances;

    /// <summary>On the axis [m]; 0 where the limit is met nowhere.</summary>
    public double OnAxis => _distances[0, 0];

    /// <summary>The shape for a field and a limit [W/m²].</summary>
    public static KeepOutShape Of(ExposureField field, double density)
    {
        double[,] distances = new double[OffCount, AzimuthCount];
        for (int off = 0; off < OffCount; off++)
        {
            for (int azimuth = 0; azimuth < AzimuthCount; azimuth++)
            {
                distances[off, azimuth] = off is 0 or OffCount - 1 && azimuth > 0
                    ? distances[off, 0] // on the axis the azimuth means nothing
                    : KeepOut.Towards(field, density, Direction(off * OffStep, azimuth * AzimuthStep));
            }
        }

        return new KeepOutShape(distances);
    }

    /// <summary>Towards a direction of the antenna's own frame [m].</summary>
    public double Towards(Vector direction)
    {
        double off = Math.Acos(Math.Clamp(direction.X / direction.Length, -1.0, 1.0)) / OffStep;
        double azimuth = Math.Atan2(Math.Abs(direction.Z), Math.Abs(direction.Y)) / AzimuthStep;
        int i = Math.Min((int)off, OffCount - 2), j = Math.Min((int)azimuth, AzimuthCount - 2);
        return Between(
            Between(_distances[i, j], _distances[i + 1, j], off - i),
            Between(_distances[i, j + 1], _distances[i + 1, j + 1], off - i),
            azimuth - j);
    }

    private static Vector Direction(double off, double azimuth) =>
        new(Math.Cos(off), Math.Sin(off) * Math.Cos(azimuth), Math.Sin(off) * Math.Sin(azimuth));

    private static double Between(double a, double b, double share) => a + ((b - a) * share);
}
