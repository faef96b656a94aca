namespace Hornbook.Tabletop.Hands;

/// <summary>Angles of a pose, held where they mean one thing only.</summary>
public static class PoseSteps
{
    /// <summary>A tilt goes no further than straight up or down: beyond, it would be a turn and a roll.</summary>
    public static double HeldTilt(double tilt) => Math.Clamp(tilt, -Math.PI / 2.0, Math.PI / 2.0);

    /// <summary>The same direction, above −180° and up to 180°.</summary>
    public static double InOneTurn(double angle)
    {
        double rest = Math.IEEERemainder(angle, 2.0 * Math.PI);
        return rest <= -Math.PI + 1e-12 ? Math.PI : rest;
    }
}
