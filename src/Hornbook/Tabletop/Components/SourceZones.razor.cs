using Hornbook.Physics;
using Hornbook.Tabletop.Sheets;
using Microsoft.AspNetCore.Components;

namespace Hornbook.Tabletop.Components;

/// <summary>Distances round the mouth of the source that matter: where its far zone begins, and how far to keep away.</summary>
public sealed partial class SourceZones
{
    private SheetPoint _mouth;
    private double _nearMm;
    private string _frame = string.Empty;
    private string _keepOut = string.Empty;
    private (KeepOutShape? Shape, Pose Pose, SheetView View, SheetLayout Sheet)? _drawn; // what the outline is of: most moves leave it as it is
    private double _looks; // where the source looks, in the plane of the view [rad]

    [Parameter, EditorRequired]
    public required BenchSession Session { get; set; }

    [Parameter]
    public SheetView View { get; set; }

    private Pose Pose => Session.Source.Pose;

    protected override void OnParametersSet()
    {
        _mouth = Session.Sheet.Project(View, Pose.Position);
        _nearMm = 1e3 * Session.NearZone;
        (KeepOutShape? Shape, Pose Pose, SheetView View, SheetLayout Sheet) wanted = (Session.Advice.KeepOut, Pose, View, Session.Sheet);
        if (wanted != _drawn)
        {
            _drawn = wanted;
            _keepOut = wanted.Shape is { OnAxis: > 0.0 } shape ? Outline(shape) : string.Empty;
        }

        Vector forward = Pose.Forward;
        _looks = Math.Atan2(View == SheetView.Plan ? forward.Y : forward.Z, forward.X);
        _frame = View == SheetView.Plan ? "plan-frame" : "elevation-frame";
    }

    /// <summary>The keep-out distance all round, in the level or upright plane through the mouth.</summary>
    private string Outline(KeepOutShape shape)
    {
        const int Points = 120;
        IEnumerable<SheetPoint> round = Enumerable.Range(0, Points).Select(i => Rim(2.0 * Math.PI * i / Points));
        return $"M{string.Join('L', round)}Z";

        SheetPoint Rim(double angle)
        {
            Vector direction = View == SheetView.Plan
                ? new Vector(Math.Cos(angle), Math.Sin(angle), 0.0)
                : new Vector(Math.Cos(angle), 0.0, Math.Sin(angle));
            double distance = shape.Towards(Pose.ToOwn(Pose.Position + direction));
            return Session.Sheet.Project(View, Pose.Position + (direction * distance));
        }
    }

    /// <summary>The far end of the near zone before the mouth: a piece of circle about it, 70° to either side.</summary>
    private string NearZone()
    {
        const double Aside = 70.0 * Math.PI / 180.0;
        string radius = SvgText.Number(_nearMm);
        return $"M{At(Aside)}A{radius},{radius} 0 0 1 {At(-Aside)}";

        SheetPoint At(double off) => new(_mouth.X + (_nearMm * Math.Cos(_looks + off)), _mouth.Y - (_nearMm * Math.Sin(_looks + off)));
    }
}
