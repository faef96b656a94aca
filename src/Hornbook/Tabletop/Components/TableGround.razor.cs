using Hornbook.Tabletop.Sheets;
using Microsoft.AspNetCore.Components;

namespace Hornbook.Tabletop.Components;

public sealed partial class TableGround
{
    private (SheetLayout Sheet, LengthUnit Unit)? _drawn;
    private string _alongPlan = string.Empty;
    private string _alongElevation = string.Empty;
    private string _across = string.Empty;
    private string _up = string.Empty;

    [Parameter, EditorRequired]
    public required SheetLayout Sheet { get; set; }

    [Parameter, EditorRequired]
    public required LengthUnit Unit { get; set; }

    private RulerDivision Ruler => Unit.Ruler;

    // Hundreds of ticks that never move: drawn once, so that a drag costs nothing here.
    protected override bool ShouldRender() => _drawn != (Sheet, Unit);

    protected override void OnParametersSet()
    {
        if (_drawn == (Sheet, Unit))
        {
            return;
        }

        _alongPlan = SvgText.RulerTicks(Ruler, 0.0, Sheet.LengthMm, (x, tick) => Downwards(x, Sheet.HalfWidthMm, tick));
        _alongElevation = SvgText.RulerTicks(Ruler, 0.0, Sheet.LengthMm, (x, tick) => Downwards(x, Sheet.TableTopLine + 22.0, tick));
        _across = SvgText.RulerTicks(Ruler, -Sheet.HalfWidthMm, 2.0 * Sheet.HalfWidthMm, (y, tick) => Leftwards(-y, tick));
        _up = SvgText.RulerTicks(Ruler, 0.0, Sheet.HeadroomMm, (z, tick) => Leftwards(Sheet.TableTopLine - z, tick));
    }

    protected override void OnAfterRender(bool firstRender) => _drawn = (Sheet, Unit);

    private static (SheetPoint Foot, SheetPoint Head) Downwards(double x, double y, double tick) =>
        (new SheetPoint(x, y), new SheetPoint(x, y + tick));

    private static (SheetPoint Foot, SheetPoint Head) Leftwards(double y, double tick) =>
        (new SheetPoint(0.0, y), new SheetPoint(-tick, y));

    private IEnumerable<int> Numbers(double fromMm, double toMm, int every) => RulerDivision.Labels(fromMm, toMm, Ruler.TickMm, every);

    private string At(int number) => N(number * Ruler.TickMm);

    private static string Signed(int number) => number < 0 ? $"\u2212{-number}" : $"{number}";

    private static string N(double number) => SvgText.Number(number);
}
