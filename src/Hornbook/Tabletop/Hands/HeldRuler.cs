using Hornbook.Physics;
using Hornbook.Tabletop.Sheets;

namespace Hornbook.Tabletop.Hands;

/// <summary>One end of the ruler in hand. It is no part of the bench: moving it is no step.</summary>
internal sealed class HeldRuler(BenchSession session, RulerEnd end, SheetView view, SheetPoint from) : IHeld
{
    private readonly Vector _start = session.Ruler?.At(end) ?? Vector.Zero;

    public void Follow(SheetPoint at, HandSteps steps) =>
        session.Measure(end, steps.Place(_start, SheetLayout.ToBench(view, at - from)));

    public void Release()
    {
    }
}
