using Hornbook.Physics;
using Hornbook.Tabletop.Sheets;
using Microsoft.JSInterop;

namespace Hornbook.Tabletop.Hands;

/// <summary>What the browser calls when something on the sheet is dragged or a key is pressed on it.</summary>
public sealed class BenchHands(BenchSession session)
{
    private const string RulerName = "ruler";

    private IHeld? _held;

    /// <summary>Takes hold of something.</summary>
    /// <param name="thing">"source", "receiver", "panels.NAME" or "ruler".</param>
    /// <param name="grip">"move", "turn", "tilt" or "roll"; of a ruler "from" or "to".</param>
    /// <param name="view">"plan" or "elevation"; a dial says either.</param>
    /// <param name="x">Where on the sheet [mm].</param>
    /// <param name="y">Where on the sheet [mm].</param>
    [JSInvokable]
    public void Grasp(string thing, string grip, string view, double x, double y)
    {
        SheetView seen = Named<SheetView>(view);
        SheetPoint at = new(x, y);
        _held = thing == RulerName
            ? new HeldRuler(session, Named<RulerEnd>(grip), seen, at)
            : HeldThing.By(session, new BenchThing(thing), Named<Grip>(grip), seen, at);
    }

    /// <summary>Follows the pointer.</summary>
    /// <param name="x">Where on the sheet [mm].</param>
    /// <param name="y">Where on the sheet [mm].</param>
    /// <param name="free">Alt is held: no snapping.</param>
    [JSInvokable]
    public void Follow(double x, double y, bool free)
    {
        if (double.IsFinite(x) && double.IsFinite(y))
        {
            _held?.Follow(new SheetPoint(x, y), session.Preferences.Steps(free));
        }
    }

    /// <summary>Lets go.</summary>
    [JSInvokable]
    public void Release()
    {
        _held?.Release();
        _held = null;
    }

    /// <summary>A key was pressed on something.</summary>
    [JSInvokable]
    public void Press(string thing, string grip, string view, string key, bool fine)
    {
        if (thing == RulerName)
        {
            PressOnRuler(Named<RulerEnd>(grip), Named<SheetView>(view), key, fine);
            return;
        }

        BenchThing pressed = new(thing);
        if (key is "f" or "F")
        {
            if (session.Plan.Panels.FirstOrDefault(panel => panel.Name == pressed.PanelName) is { } panel)
            {
                session.Flip(panel);
            }

            return;
        }

        Pose now = session.PoseOf(pressed);
        Pose? next = key == "Home"
            ? session.OpenedPose(pressed)
            : KeyMoves.After(now, Named<Grip>(grip), Named<SheetView>(view), key, fine);
        session.Place(pressed, next ?? now);
        session.Release(run: $"{thing} {grip} {view} {key}");
    }

    /// <summary>Control with Z, and with Shift too.</summary>
    [JSInvokable]
    public void Travel(bool forward)
    {
        if (forward)
        {
            session.Redo();
        }
        else
        {
            session.Undo();
        }
    }

    private void PressOnRuler(RulerEnd end, SheetView view, string key, bool fine)
    {
        if (session.Ruler is { } ruler && KeyMoves.After(new Pose(ruler.At(end)), Grip.Move, view, key, fine) is Pose moved)
        {
            session.Measure(end, moved.Position);
        }
    }

    private static T Named<T>(string name)
        where T : struct, Enum => Enum.Parse<T>(name, ignoreCase: true);
}
