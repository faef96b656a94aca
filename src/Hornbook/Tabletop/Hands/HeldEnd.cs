using Hornbook.Bench.Demonstrations;
using Hornbook.Physics;
using Hornbook.Tabletop.Sheets;

namespace Hornbook.Tabletop.Hands;

/// <summary>Source or receiver in hand; letting go makes the whole drag one step.</summary>
internal sealed class HeldEnd(BenchSession session, BenchEnd end, Drag drag) : IHeld
{
    internal static HeldEnd By(BenchSession session, BenchEnd end, Grip grip, SheetView view, SheetPoint at)
    {
        Pose pose = session.PoseOf(end);
        SheetPoint pivot = grip == Grip.Roll ? default : session.Sheet.Project(view, pose.Position);
        return new HeldEnd(session, end, new Drag(grip, view, pose, at, pivot));
    }

    public void Follow(SheetPoint at, HandSteps steps) => session.Place(end, drag.At(at, steps));

    public void Release() => session.Release();
}
