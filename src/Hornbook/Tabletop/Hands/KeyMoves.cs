using Hornbook.Physics;
using Hornbook.Tabletop.Sheets;

namespace Hornbook.Tabletop.Hands;

/// <summary>What a key does to an end that has the focus. The page lists them in the same words.</summary>
public static class KeyMoves
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>The pose after a key, or null where the key means nothing here.</summary>
    /// <param name="pose">The pose now.</param>
    /// <param name="grip">What has the focus.</param>
    /// <param name="view">In which view.</param>
    /// <param name="key">As the browser names it: "ArrowLeft", "l".</param>
    /// <param name="fine">Shift is held: 1 mm instead of 1 cm, 1° instead of 5°.</param>
    public static Pose? After(Pose pose, Grip grip, SheetView view, string key, bool fine)
    {
        ArgumentNullException.ThrowIfNull(key);
        double step = fine ? 1e-3 : 1e-2;
        double angle = fine ? Degree : 5.0 * Degree;
        return Letter(pose, key, angle) ?? Height(pose, key, step) ?? grip switch
        {
            Grip.Move => Moved(pose, view, key, step),
            Grip.Turn => Sense(key) is double s ? Turned(pose, -s * angle) : null,
            Grip.Tilt => Sense(key) is double s ? Tilted(pose, s * angle) : null,
            Grip.Roll => Sense(key) is double s ? Rolled(pose, s * angle) : null,
            _ => null,
        };
    }

    private static Pose? Letter(Pose pose, string key, double angle) => key switch
    {
        "l" or "L" => Turned(pose, angle),
        "r" or "R" => Turned(pose, -angle),
        "u" or "U" => Tilted(pose, angle),
        "d" or "D" => Tilted(pose, -angle),
        "c" or "C" => Rolled(pose, angle),
        "a" or "A" => Rolled(pose, -angle),
        _ => null,
    };

    private static Pose? Height(Pose pose, string key, double step) => key switch
    {
        "PageUp" => Shifted(pose, new Vector(0.0, 0.0, step)),
        "PageDown" => Shifted(pose, new Vector(0.0, 0.0, -step)),
        _ => null,
    };

    private static Pose? Moved(Pose pose, SheetView view, string key, double step)
    {
        Vector up = view == SheetView.Plan ? new Vector(0.0, step, 0.0) : new Vector(0.0, 0.0, step);
        return key switch
        {
            "ArrowRight" => Shifted(pose, new Vector(step, 0.0, 0.0)),
            "ArrowLeft" => Shifted(pose, new Vector(-step, 0.0, 0.0)),
            "ArrowUp" => Shifted(pose, up),
            "ArrowDown" => Shifted(pose, -up),
            _ => null,
        };
    }

    /// <summary>+1 for the keys that raise a slider, −1 for those that lower it.</summary>
    private static double? Sense(string key) => key switch
    {
        "ArrowRight" or "ArrowUp" => 1.0,
        "ArrowLeft" or "ArrowDown" => -1.0,
        _ => null,
    };

    private static Pose Shifted(Pose pose, Vector step) => pose with { Position = pose.Position + step };

    private static Pose Turned(Pose pose, double angle) => pose with { Turn = PoseSteps.InOneTurn(pose.Turn + angle) };

    private static Pose Tilted(Pose pose, double angle) => pose with { Tilt = PoseSteps.HeldTilt(pose.Tilt + angle) };

    private static Pose Rolled(Pose pose, double angle) => pose with { Roll = PoseSteps.InOneTurn(pose.Roll + angle) };
}
