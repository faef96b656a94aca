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

    [Parameter, EditorRequired]
    public required BenchSession Session { get; set; }

    [Parameter]
    public SheetView View { get; set; }

    private Pose Pose => Session.Source.Pose;

    protected override void OnParametersSet()
    {
        _mouth = Session.Sheet.Project(View, Pose.Position);
        _nearMm = 1e3 * Session.NearZone;
        _frame = View == SheetView.Plan ? "plan-frame" : "elevation-frame";
    }

    /// <summary>A piece of circle about the mouth for lettering to run along, off the axis where the other antenna stands.</summary>
    private string Arc(double radius)
    {
        (double from, double to) = (Pose.Turn + 0.06, Pose.Turn + 0.06 + Math.Min(1.2, 420.0 / radius));
        SheetPoint start = At(to), end = At(from);
        string r = SvgText.Number(radius);
        return $"M{start}A{r},{r} 0 0 1 {end}";

        SheetPoint At(double angle) => new(_mouth.X + (radius * Math.Cos(angle)), _mouth.Y - (radius * Math.Sin(angle)));
    }

    private static string N(double number) => SvgText.Number(number);
}
