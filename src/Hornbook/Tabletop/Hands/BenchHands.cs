using Hornbook.Bench.Demonstrations;
using Hornbook.Physics;
using Hornbook.Tabletop.Sheets;
using Microsoft.JSInterop;

namespace Hornbook.Tabletop.Hands;

/// <summary>What the browser calls when something on the sheet is dragged or a key is pressed on it.</summary>
public sealed class BenchHands(BenchSession session)
{
    private BenchEnd _end;
    private Drag? _drag;

    /// <summary>Takes hold of an end.</summary>
    /// <param name="end">"source" or "receiver".</param>
    /// <param name="grip">"move", "turn", "tilt" or "roll".</param>
    /// <param name="view">"plan" or "elevation"; a dial says either.</param>
    /// <param name="x">Where on the sheet [mm].</param>
    /// <param name="y">Where on the sheet [mm].</param>
    [JSInvokable]
    public void Grasp(string end, string grip, string view, double x, double y)
    {
        _end = Named<BenchEnd>(end);
        Grip by = Named<Grip>(grip);
        SheetView seen = Named<SheetView>(view);
        Pose pose = session.PoseOf(_end);
        SheetPoint pivot = by == Grip.Roll ? default : session.Sheet.Project(seen, pose.Position);
        _drag = new Drag(by, seen, pose, new SheetPoint(x, y), pivot);
    }

    /// <summary>Follows the pointer.</summary>
    [JSInvokable]
    public void Follow(double x, double y)
    {
        if (_drag is not null && double.IsFinite(x) && double.IsFinite(y))
        {
            session.Place(_end, _drag.At(new SheetPoint(x, y)));
        }
    }

    /// <summary>Lets go: the whole drag is one step.</summary>
    [JSInvokable]
    public void Release()
    {
        _drag = null;
        session.Release();
    }

    /// <summary>A key was pressed on an end.</summary>
    [JSInvokable]
    public void Press(string end, string grip, string view, string key, bool fine)
    {
        BenchEnd pressed = Named<BenchEnd>(end);
        Pose now = session.PoseOf(pressed);
        Pose? next = key == "Home"
            ? session.OpenedPose(pressed)
            : KeyMoves.After(now, Named<Grip>(grip), Named<SheetView>(view), key, fine);
        session.Place(pressed, next ?? now);
        session.Release(run: $"{end} {grip} {view} {key}");
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

    private static T Named<T>(string name)
        where T : struct, Enum => Enum.Parse<T>(name, ignoreCase: true);
}
