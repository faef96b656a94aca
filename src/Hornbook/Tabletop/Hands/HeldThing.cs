using Hornbook.Physics;
using Hornbook.Tabletop.Sheets;

namespace Hornbook.Tabletop.Hands;

/// <summary>Source, receiver or a panel in hand; letting go makes the whole drag one step.</summary>
internal sealed class HeldThing(BenchSession session, BenchThing thing, Drag drag) : IHeld
{
    internal static HeldThing By(BenchSession session, BenchThing thing, Grip grip, SheetView view, SheetPoint at)
    {
        Pose pose = session.PoseOf(thing);
        SheetPoint pivot = grip == Grip.Roll ? default : session.Sheet.Project(view, pose.Position);
        return new HeldThing(session, thing, new Drag(grip, view, pose, at, pivot));
    }

    public void Follow(SheetPoint at, HandSteps steps) => session.Place(thing, drag.At(at, steps));

    public void Release() => session.Release();
}
