using Hornbook.Physics;

namespace Hornbook.Tabletop.Hands;

/// <summary>Steps in which a hand sets a pose: whole millimetres and half degrees, angles within one turn.</summary>
public static class PoseSteps
{
    private const double Degree = Math.PI / 180.0;

    public static Vector WholeMillimetres(Vector place) =>
        new(WholeMillimetres(place.X), WholeMillimetres(place.Y), WholeMillimetres(place.Z));

    public static double WholeHalfDegrees(double angle) => InOneTurn(Math.Round(angle / (Degree / 2.0)) * (Degree / 2.0));

    public static double WholeDegrees(double angle) => InOneTurn(Math.Round(angle / Degree) * Degree);

    /// <summary>A tilt goes no further than straight up or down: beyond, it would be a turn and a roll.</summary>
    public static double HeldTilt(double tilt) => Math.Clamp(tilt, -Math.PI / 2.0, Math.PI / 2.0);

    /// <summary>The same direction, above −180° and up to 180°.</summary>
    public static double InOneTurn(double angle)
    {
        double rest = Math.IEEERemainder(angle, 2.0 * Math.PI);
        return rest <= -Math.PI + 1e-12 ? Math.PI : rest;
    }

    private static double WholeMillimetres(double length) => Math.Round(length * 1e3) / 1e3;
}
