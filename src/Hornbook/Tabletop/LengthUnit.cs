namespace Hornbook.Tabletop;

/// <summary>The unit in which this window shows and takes lengths.</summary>
/// <param name="Sign">As it stands behind a number.</param>
/// <param name="Name">As a button says it.</param>
/// <param name="Metres">How long one is [m].</param>
/// <param name="SnapMetres">Step to which a hand snaps [m].</param>
/// <param name="Snap">That step in words.</param>
/// <param name="Ruler">How the rulers of the sheet are divided.</param>
public sealed record LengthUnit(string Sign, string Name, double Metres, double SnapMetres, string Snap, RulerDivision Ruler)
{
    public static LengthUnit Centimetre { get; } = new("cm", "Centimetres", 0.01, 0.01, "1 cm", new RulerDivision(10.0, 5, 10, 20, 10));

    /// <summary>International inch, exactly 25.4 mm; a hand snaps to half ones.</summary>
    public static LengthUnit Inch { get; } = new("in", "Inches", 0.0254, 0.0127, "½ in", new RulerDivision(25.4, 3, 6, 6, 3));

    public static IReadOnlyList<LengthUnit> All { get; } = [Centimetre, Inch];

    /// <summary>The unit of a sign; centimetres where there is none such.</summary>
    public static LengthUnit Named(string? sign) => All.FirstOrDefault(unit => unit.Sign == sign) ?? Centimetre;
}

/// <summary>How a ruler is divided.</summary>
/// <param name="TickMm">From one tick to the next [mm].</param>
/// <param name="Middle">Every so many ticks one is longer.</param>
/// <param name="Major">Every so many ticks one is longest.</param>
/// <param name="LabelAlong">Every so many ticks along the bench there is a number.</param>
/// <param name="LabelUp">Every so many ticks upwards there is a number.</param>
public sealed record RulerDivision(double TickMm, int Middle, int Major, int LabelAlong, int LabelUp)
{
    /// <summary>Ticks that bear a number, from one end to the other.</summary>
    public static IEnumerable<int> Labels(double fromMm, double toMm, double tickMm, int every)
    {
        int first = (int)Math.Ceiling((fromMm / tickMm / every) - 1e-9), last = (int)Math.Floor((toMm / tickMm / every) + 1e-9);
        return Enumerable.Range(first, Math.Max(0, last - first + 1)).Select(i => i * every);
    }
}
