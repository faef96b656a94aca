using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Files.Format;

/// <summary>The keys of the demonstrations of what sheets and grids do to the direction of the field and to a wave between them.</summary>
internal static class FieldFormat
{
    private static readonly KeyRule Points = new("points", new CountRule(3, 2001, "121"), "How many settings are computed.", "121");

    private static readonly KeyRule Grid = Panel("grid", "\"strips\"", "The grid; as it lies its strips follow the source's field. It is put in at 45° to that.");

    private static readonly KeyRule Mirror = Panel("mirror", "\"plate\"", "The mirror behind it.");

    private static readonly KeyRule Slant = new(
        "incidence", new QuantityRule(Quantity.Angle, "-60 deg", "60 deg", "\"20 deg\""), "At which the wave meets the mirror: the receiver stands aside by twice that.", "\"20 deg\"");

    private static readonly KeyRule Distance = new(
        "distance", new QuantityRule(Quantity.Length, "1 cm", "20 m", "\"40 cm\""), "From the middle of the panel to the receiver.", "as far as it stands");

    private static readonly KeyRule Screen = new(
        "screen", new PanelNameRule("\"screen\""), "A screen that stands square on the sheet's front and shuts the straight way from mouth to mouth.", "none");

    /// <summary>One for each kind.</summary>
    internal static IReadOnlyList<Variant> Variants { get; } =
    [
        new(DemonstrationFormat.ClosedBox, Panel("panel", "\"box\"", "The grid in the box, its strips at 45° to its upright, which is the handle.")),
        new(DemonstrationFormat.Brewster,
            Panel("panel", "\"acrylic\"", "The sheet that is put in and turned."),
            Incidence("from", "\"35 deg\"", "First angle between wave and normal; negative on the other side."), Incidence("to", "\"75 deg\"", "Last angle between wave and normal."),
            Points, Distance, Screen),
        new(DemonstrationFormat.HalfMirrors,
            Panel("first", "\"half-mirror\"", "The half mirror that stands."), Panel("second", "\"half-mirror-2\"", "The half mirror that is moved."),
            Shift("from", "\"0 mm\"", "First shift of the second one, along the source's axis."), Shift("to", "\"40 mm\"", "Last shift."), Points),
        new(DemonstrationFormat.CircularPolarisation,
            Grid, Mirror, Gap("gap", "\"11.4 mm\"", "From the grid to the mirror."), Slant, Distance,
            Roll("from", "\"0 deg\"", "First roll of the receiver off its present one."), Roll("to", "\"180 deg\"", "Last roll of the receiver."), Points),
        new(DemonstrationFormat.GridGap,
            Grid, Mirror, Slant, Distance, Gap("from", "\"4 mm\"", "First gap between grid and mirror."), Gap("to", "\"17 mm\"", "Last gap."), Points),
    ];

    private static KeyRule Panel(string name, string example, string meaning) => new(name, new PanelNameRule(example), meaning);

    private static KeyRule Incidence(string name, string example, string meaning) =>
        new(name, new QuantityRule(Quantity.Angle, "-85 deg", "85 deg", example), meaning);

    private static KeyRule Roll(string name, string example, string meaning) =>
        new(name, new QuantityRule(Quantity.Angle, "-360 deg", "360 deg", example), meaning);

    private static KeyRule Shift(string name, string example, string meaning) =>
        new(name, new QuantityRule(Quantity.Length, "-1 m", "1 m", example), meaning);

    private static KeyRule Gap(string name, string example, string meaning) =>
        new(name, new QuantityRule(Quantity.Length, "2 mm", "20 cm", example), meaning);
}
