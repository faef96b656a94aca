using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Tabletop.Hands;
using Hornbook.Tabletop.Sheets;
using Microsoft.AspNetCore.Components;

namespace Hornbook.Tabletop.Components;

/// <summary>A panel that stands on the table, in one view: its outline, which is dragged, and the square knob by which it is turned or tilted.</summary>
public sealed partial class PanelOnSheet
{
    private BenchThing _thing;
    private string _view = string.Empty;
    private string _turning = string.Empty;
    private PanelDrawing _drawing = null!; // set with the parameters, before the first render
    private SheetPoint _label;

    [Parameter, EditorRequired]
    public required BenchSession Session { get; set; }

    [Parameter, EditorRequired]
    public required BenchPanel Panel { get; set; }

    [Parameter]
    public SheetView View { get; set; }

    private Pose Pose => Panel.Pose;

    private string MoveLabel => View == SheetView.Plan
        ? $"Panel {Panel.Name} from above: {Length(Pose.Position.X)} along the bench, {Length(Pose.Position.Y)} across it. Arrow keys move it, F flips it."
        : $"Panel {Panel.Name} from the side: {Length(Pose.Position.X)} along the bench, {Length(Pose.Position.Z)} high. Arrow keys move it, F flips it.";

    private string KnobLabel => View == SheetView.Plan ? $"Turn {Panel.Name}" : $"Tilt {Panel.Name}";

    private string KnobText => View == SheetView.Plan ? Words.Turned(Pose.Turn) : Words.Tilted(Pose.Tilt);

    private int KnobHighest => View == SheetView.Plan ? 180 : 90;

    // A slider's value rises with the right arrow, and the right arrow turns to the right.
    private string KnobNow => SvgText.Number((View == SheetView.Plan ? -Pose.Turn : Pose.Tilt) * 180.0 / Math.PI);

    protected override void OnParametersSet()
    {
        _thing = BenchThing.Panel(Panel.Name);
        _view = View == SheetView.Plan ? "plan" : "elevation";
        _turning = View == SheetView.Plan ? "turn" : "tilt";
        _drawing = PanelDrawing.Of(Panel, Pose, Session.Sheet, View);
        _label = View == SheetView.Plan
            ? new SheetPoint(_drawing.Centre.X, _drawing.Slab.Max(p => p.Y) + Session.Sheet.LetterMm + 6.0)
            : new SheetPoint(_drawing.Centre.X, _drawing.Slab.Min(p => p.Y) - 12.0);
    }

    private Shown Length(double metres) => Shown.Length(metres, Session.Preferences.Unit);

    private static string N(double number) => SvgText.Number(number);
}
