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
    private SheetPoint _label;
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
        _keepOut = Session.KeepOut is { OnAxis: > 0.0 } shape ? Outline(shape) : string.Empty;
        _label = LabelPlace();
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

    /// <summary>Under the broadest part of the keep-out zone, or as near to it as the table allows.</summary>
    private SheetPoint LabelPlace()
    {
        const double Below = 185.0, LetteringHalf = 330.0;
        double reach = 0.55e3 * (Session.KeepOut?.OnAxis ?? 0.0);
        double x = _mouth.X + (reach * Math.Cos(Pose.Turn));
        double y = _mouth.Y - (reach * Math.Sin(Pose.Turn)) + Below;
        return new SheetPoint(
            Math.Clamp(x, Session.Sheet.Left + LetteringHalf, Session.Sheet.Left + Session.Sheet.Width - LetteringHalf),
            Math.Clamp(y, -Session.Sheet.HalfWidthMm + 40.0, Session.Sheet.HalfWidthMm - 20.0));
    }

    /// <summary>A piece of circle about the mouth, clockwise on the sheet, between angles off where it looks [rad].</summary>
    private string Arc(double radius, double from, double to)
    {
        string r = SvgText.Number(radius);
        return $"M{At(to)}A{r},{r} 0 0 1 {At(from)}";

        SheetPoint At(double off) => new(_mouth.X + (radius * Math.Cos(_looks + off)), _mouth.Y - (radius * Math.Sin(_looks + off)));
    }

    private static string N(double number) => SvgText.Number(number);
}
