using Hornbook.Physics;
using Hornbook.Tabletop.Sheets;

namespace Hornbook.Tabletop.Hands;

/// <summary>A drag from where it began: the pose then and the point taken hold of, so that nothing jumps at the first touch.</summary>
/// <param name="Grip">By what it is held.</param>
/// <param name="View">In which view; for a roll the dial, whose centre is (0, 0).</param>
/// <param name="Start">The pose at the beginning.</param>
/// <param name="Held">The point taken hold of [mm].</param>
/// <param name="Pivot">What it turns about, on the sheet [mm].</param>
public sealed record Drag(Grip Grip, SheetView View, Pose Start, SheetPoint Held, SheetPoint Pivot)
{
    // A turned horn seen from the side is short, and a small movement of its tail would mean a large tilt: held to a fifth.
    private const double LeastForeshortening = 0.2;

    /// <summary>The pose that a hand at this point asks for.</summary>
    public Pose At(SheetPoint at, HandSteps steps)
    {
        ArgumentNullException.ThrowIfNull(steps);
        return Grip switch
        {
            Grip.Move => Start with { Position = steps.Place(Start.Position, SheetLayout.ToBench(View, at - Held)) },
            Grip.Turn => Start with { Turn = HandSteps.Turned(Start.Turn, Angle(Held) - Angle(at), steps.Angle) },
            Grip.Tilt => Start with { Tilt = PoseSteps.HeldTilt(HandSteps.Turned(Start.Tilt, TiltOf(at) - TiltOf(Held), steps.Angle)) },
            Grip.Roll => Start with { Roll = HandSteps.Turned(Start.Roll, Angle(at) - Angle(Held), steps.Roll) },
            _ => Start,
        };
    }

    /// <summary>Direction from the pivot, clockwise as the sheet's y points down [rad].</summary>
    private double Angle(SheetPoint p) => Math.Atan2(p.Y - Pivot.Y, p.X - Pivot.X);

    /// <summary>The tilt whose tail would be seen at this point; the knob is at the tail, so the mouth looks the other way.</summary>
    private double TiltOf(SheetPoint p)
    {
        double along = Math.Cos(Start.Turn);
        double seen = Math.Abs(along) < LeastForeshortening ? Math.CopySign(LeastForeshortening, along) : along;
        return Math.Atan2(p.Y - Pivot.Y, (Pivot.X - p.X) / seen);
    }
}
