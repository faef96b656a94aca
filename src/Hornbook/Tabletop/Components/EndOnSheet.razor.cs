using Hornbook.Bench.Demonstrations;
using Hornbook.Physics;
using Hornbook.Tabletop.Sheets;
using Microsoft.AspNetCore.Components;

namespace Hornbook.Tabletop.Components;

/// <summary>Source or receiver in one view: its outline, which is dragged, and the knob by which it is turned or tilted.</summary>
public sealed partial class EndOnSheet
{
    private string _name = string.Empty;
    private string _view = string.Empty;
    private string _turning = string.Empty;
    private AntennaOutline _outline = null!; // set with the parameters, before the first render
    private SheetPoint _foot;
    private SheetPoint _tail;
    private SheetPoint _label;

    [Parameter, EditorRequired]
    public required BenchSession Session { get; set; }

    [Parameter]
    public BenchEnd End { get; set; }

    [Parameter]
    public SheetView View { get; set; }

    private Pose Pose => Session.PoseOf(End);

    private string MoveLabel => View == SheetView.Plan
        ? $"{Words.Name(End)} from above: {Length(Pose.Position.X)} along the bench, {Length(Pose.Position.Y)} across it. Arrow keys move it."
        : $"{Words.Name(End)} from the side: {Length(Pose.Position.X)} along the bench, {Length(Pose.Position.Z)} high. Arrow keys move it.";

    private string KnobLabel => View == SheetView.Plan ? $"Turn the {_name}" : $"Tilt the {_name}";

    private string KnobText => View == SheetView.Plan ? Words.Turned(Pose.Turn) : Words.Tilted(Pose.Tilt);

    private int KnobHighest => View == SheetView.Plan ? 180 : 90;

    // A slider's value rises with the right arrow, and the right arrow turns to the right.
    private string KnobNow => SvgText.Number((View == SheetView.Plan ? -Pose.Turn : Pose.Tilt) * 180.0 / Math.PI);

    protected override void OnParametersSet()
    {
        _name = End == BenchEnd.Source ? "source" : "receiver";
        _view = View == SheetView.Plan ? "plan" : "elevation";
        _turning = View == SheetView.Plan ? "turn" : "tilt";
        Physics.Antennas.AntennaShape shape = Session.Plan.Antenna(Session.AntennaOf(End));
        _outline = AntennaOutline.Of(shape, Pose, Session.Sheet, View);
        double behind = AntennaOutline.LengthBehindMouth(shape);
        _foot = See(-behind);
        _tail = See(-behind - AntennaOutline.GuideShown);
        SheetPoint[] all = [.. _outline.Flare, .. _outline.Guide, _outline.FieldTip, _outline.FieldTail];
        _label = View == SheetView.Plan
            ? new SheetPoint(_foot.X, all.Max(p => p.Y) + Session.Sheet.LetterMm + 12.0)
            : new SheetPoint(_foot.X, all.Min(p => p.Y) - 14.0);
    }

    private SheetPoint See(double ownX) => Session.Sheet.Project(View, Pose.ToBench(new Vector(ownX, 0.0, 0.0)));

    private Shown Length(double metres) => Shown.Length(metres, Session.Preferences.Unit);

    private static string N(double number) => SvgText.Number(number);
}
