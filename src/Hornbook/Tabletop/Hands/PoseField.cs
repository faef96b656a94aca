using System.Globalization;
using Hornbook.Physics;

namespace Hornbook.Tabletop.Hands;

/// <summary>One number of a pose as it is typed: in a unit of length and in degrees.</summary>
/// <param name="Key">Short name for the page.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Scale">How many of the unit make one SI unit.</param>
/// <param name="Get">Reads it [SI].</param>
/// <param name="With">The pose with it changed [SI].</param>
public sealed record PoseField(string Key, string Name, string Unit, double Scale, Func<Pose, double> Get, Func<Pose, double, Pose> With)
{
    private const double DegreesPerRadian = 180.0 / Math.PI;

    /// <summary>The numbers of a pose, lengths in a unit.</summary>
    public static IReadOnlyList<PoseField> In(LengthUnit unit) =>
    [
        Length(unit, "along", "Along", p => p.X, (p, x) => p with { X = x }),
        Length(unit, "left", "To the left", p => p.Y, (p, y) => p with { Y = y }),
        Length(unit, "height", "Height", p => p.Z, (p, z) => p with { Z = z }),
        Angle("turn", "Turn left", p => p.Turn, (p, turn) => p with { Turn = PoseSteps.InOneTurn(turn) }),
        Angle("tilt", "Tilt up", p => p.Tilt, (p, tilt) => p with { Tilt = PoseSteps.HeldTilt(tilt) }),
        Angle("roll", "Roll clockwise", p => p.Roll, (p, roll) => p with { Roll = PoseSteps.InOneTurn(roll) }),
    ];

    /// <summary>What a browser's arrow keys change it by, in its unit.</summary>
    public string Step => Unit == "°" ? "0.5" : "0.1";

    /// <summary>As an input field holds it.</summary>
    public string Text(Pose pose) => (Scale * Get(pose)).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>The pose after something was typed; the same pose where it is not a finite number.</summary>
    public Pose Typed(Pose pose, string? text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number)
            ? With(pose, number / Scale)
            : pose;

    private static PoseField Length(LengthUnit unit, string key, string name, Func<Vector, double> get, Func<Vector, double, Vector> with) =>
        new(key, name, unit.Sign, 1.0 / unit.Metres, p => get(p.Position), (p, length) => p with { Position = with(p.Position, length) });

    private static PoseField Angle(string key, string name, Func<Pose, double> get, Func<Pose, double, Pose> with) =>
        new(key, name, "°", DegreesPerRadian, get, with);
}
