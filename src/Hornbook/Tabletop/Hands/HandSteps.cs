using Hornbook.Physics;

namespace Hornbook.Tabletop.Hands;

/// <summary>Steps in which a drag sets a pose.</summary>
/// <param name="Length">Of a place [m].</param>
/// <param name="Angle">Of turn and tilt [rad].</param>
/// <param name="Roll">Of the dial [rad].</param>
public sealed record HandSteps(double Length, double Angle, double Roll)
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>What a hand can still set on a table: 1 mm, half a degree, on the small dial one.</summary>
    public static HandSteps Fine { get; } = new(1e-3, 0.5 * Degree, Degree);

    /// <summary>What is easily set and said: whole centimetres or half inches, 5°.</summary>
    public static HandSteps Coarse(LengthUnit unit) => new(unit.SnapMetres, 5.0 * Degree, 5.0 * Degree);

    /// <summary>A place moved: in whole steps where it was moved, as it was where it was not.</summary>
    public Vector Place(Vector from, Vector by) => new(Whole(from.X, by.X), Whole(from.Y, by.Y), Whole(from.Z, by.Z));

    /// <summary>An angle turned by another, in whole steps of its own.</summary>
    public static double Turned(double from, double by, double step) =>
        PoseSteps.InOneTurn(Math.Abs(by) < 0.5 * step ? from : Math.Round((from + by) / step) * step);

    // Otherwise a thing that stands between two steps would jump at the first touch.
    private double Whole(double from, double by) => Math.Abs(by) < 0.5 * Length ? from : Math.Round((from + by) / Length) * Length;
}
