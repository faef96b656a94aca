using System.Globalization;

namespace Hornbook.Tabletop.Sheets;

/// <summary>A point on the drawing sheet in millimetres of the bench; x to the right, y down as in SVG.</summary>
public readonly record struct SheetPoint(double X, double Y)
{
    public static SheetPoint operator +(SheetPoint a, SheetPoint b) => new(a.X + b.X, a.Y + b.Y);

    public static SheetPoint operator -(SheetPoint a, SheetPoint b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>As SVG writes it, to a tenth of a millimetre: "12.3,-4".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{X:0.#},{Y:0.#}");
}
