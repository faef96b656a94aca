using Hornbook.Tabletop.Sheets;
using Microsoft.AspNetCore.Components;

namespace Hornbook.Tabletop.Components;

public sealed partial class TableGround
{
    private SheetLayout? _drawn;
    private string _alongPlan = string.Empty;
    private string _alongElevation = string.Empty;
    private string _across = string.Empty;
    private string _up = string.Empty;

    [Parameter, EditorRequired]
    public required SheetLayout Sheet { get; set; }

    // Hundreds of ticks that never move: drawn once, so that a drag costs nothing here.
    protected override bool ShouldRender() => _drawn != Sheet;

    protected override void OnParametersSet()
    {
        if (_drawn == Sheet)
        {
            return;
        }

        _alongPlan = SvgText.RulerTicks(0.0, Sheet.LengthMm, (x, tick) => Downwards(x, Sheet.HalfWidthMm, tick));
        _alongElevation = SvgText.RulerTicks(0.0, Sheet.LengthMm, (x, tick) => Downwards(x, Sheet.TableTopLine + 22.0, tick));
        _across = SvgText.RulerTicks(-Sheet.HalfWidthMm, 2.0 * Sheet.HalfWidthMm, (y, tick) => Leftwards(-y, tick));
        _up = SvgText.RulerTicks(0.0, Sheet.HeadroomMm, (z, tick) => Leftwards(Sheet.TableTopLine - z, tick));
    }

    protected override void OnAfterRender(bool firstRender) => _drawn = Sheet;

    private static (SheetPoint Foot, SheetPoint Head) Downwards(double x, double y, double tick) =>
        (new SheetPoint(x, y), new SheetPoint(x, y + tick));

    private static (SheetPoint Foot, SheetPoint Head) Leftwards(double y, double tick) =>
        (new SheetPoint(0.0, y), new SheetPoint(-tick, y));

    private static string Signed(int cm) => cm < 0 ? $"\u2212{-cm}" : $"{cm}";

    private static string N(double number) => SvgText.Number(number);
}
