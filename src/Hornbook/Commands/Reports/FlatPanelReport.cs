using Hornbook.Commands.Printing;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Commands.Reports;

/// <summary>What a flat panel reflects and lets through.</summary>
internal sealed record FlatPanelReport : IReport
{
    private const double Degree = Math.PI / 180.0;

    private static readonly double[] Angles = [0.0, 15.0, 30.0, 45.0, 60.0, 75.0];

    public required double FrequencyHz { get; init; }

    public required double ThicknessM { get; init; }

    public required IReadOnlyList<PanelLayerReport> Layers { get; init; }

    /// <summary>By angle, and at each angle for both lies of the electric field.</summary>
    public required IReadOnlyList<PanelAngleReport> Angular { get; init; }

    internal static FlatPanelReport Of(LayeredSheet sheet, double frequency) => new()
    {
        FrequencyHz = frequency,
        ThicknessM = sheet.Thickness,
        Layers = [.. sheet.Layers.Select(layer => PanelLayerReport.Of(layer, frequency))],
        Angular =
        [
            .. from angle in Angles
               from polarisation in Enum.GetValues<Polarisation>()
               select PanelAngleReport.Of(sheet, frequency, angle * Degree, polarisation)
        ],
    };

    /// <inheritdoc/>
    public void Describe(TextPage page)
    {
        page.Heading($"Panel of {Show.Length(ThicknessM)} at {Show.Gigahertz(FrequencyHz)}");
        page.Gap();
        TextTable layers = new("layer", ">thickness", ">permittivity", string.Empty);
        foreach (PanelLayerReport layer in Layers)
        {
            layers.Row(
                layer.Material, Show.Millimetres(layer.ThicknessM), $"{Show.Fixed(layer.PermittivityRatio, 2)} - {Show.Fixed(layer.LossPermittivityRatio, 3)}j",
                layer.IsKnownHere ? string.Empty : "not known at this frequency: a guess");
        }

        page.Table(layers);
        page.Heading("Of the power of a plane wave");
        TextTable table = new(">angle", "electric field", ">passes", string.Empty, ">thrown back", string.Empty, ">kept as heat");
        foreach (PanelAngleReport row in Angular)
        {
            table.Row(
                Show.Fixed(row.AngleDeg, 0, "deg"), row.ElectricField, Percent(row.PassedDb), Show.Db(row.PassedDb), Percent(row.ReflectedDb), Show.Db(row.ReflectedDb),
                Show.Fixed(100.0 * row.AbsorbedRatio, 0, "%"));
        }

        page.Table(table);
        page.Paragraph("The angle is that between wave and normal; the field lies across the plane of the two, or within it.");
        page.Paragraph("Near an edge, in a beam broader than the panel, or close to a mouth it is different.");
    }

    private static string Percent(double levelDb) => Show.Fixed(100.0 * Physics.Decibels.ToRatio(levelDb), 0, "%");
}
