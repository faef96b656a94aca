using Hornbook.Bench.Files.Quantities;
using Hornbook.Physics.Exposure;

namespace Hornbook.Bench.Files.Format;

/// <summary>The bench file, format 1: every table and key that there is. The reader, the reference and the schema all follow this one table.</summary>
internal static class BenchFormat
{
    /// <summary>The version that this program reads and writes.</summary>
    internal const int Version = 1;

    /// <summary>The whole file.</summary>
    internal static TableShape File { get; } = new(
        "the file",
        new("format", new CountRule(Version, Version, "1"), "Version of the bench file format."),
        new("title", new TextRule("\"Evening bench\"", 120), "What the bench is called; it heads every figure."),
        new("frequency", new QuantityRule(Quantity.Frequency, "1 GHz", "300 GHz", "\"10.525 GHz\""), "Frequency of the source."),
        new("table", new TableRule(Table), "The table top."),
        new("antennas", new NamedTablesRule(new TableRule(AntennaFormat.Antenna), "antenna", 1), "The antennas at hand, each under its name."),
        new("panels", new NamedTablesRule(new TableRule(PanelFormat.Panel), "panel", 0), "The panels at hand, each under its name.", "none"),
        new("source", new TableRule(EndFormat.Source), "The sending end."),
        new("receiver", new TableRule(EndFormat.Receiver), "The receiving end."),
        new("detector", new TableRule(DetectionFormat.Detector), "From the wave in the receiver's guide to volts."),
        new("amplifier", new TableRule(DetectionFormat.Amplifier), "From the detector's volts to more volts."),
        new("tone", new TableRule(DetectionFormat.Tone), "From volts to the pitch that is heard."),
        new("exposure", new TableRule(Exposure), "Which exposure limit the bench keeps.", "the strictest limit"),
        new("demonstrations", new ListRule(new TableRule(DemonstrationFormat.Demonstration), 0, 50, "[[demonstrations]]"), "What is shown, in order.", "none"));

    private static TableShape Table => new(
        "the table",
        new("length", new QuantityRule(Quantity.Length, "10 cm", "20 m", "\"1.8 m\""), "Along the bench, x; x = 0 is its left edge."),
        new("width", new QuantityRule(Quantity.Length, "5 cm", "20 m", "\"70 cm\""), "Across the bench, y; y = 0 is its middle."),
        new("material", MaterialFormat.Material, "What its top is made of; with it the waves that its top throws back are computed.", "the top is left out of the waves"),
        new("thickness", MaterialFormat.Thickness("\"25 mm\""), "Of its top; given with the material.", "the top is left out of the waves"));

    private static TableShape Exposure => new(
        "the exposure table",
        new KeyRule("limit", new ChoiceRule(["strictest", .. ExposureLimits.All.Select(limit => limit.Id)]), "The limit whose keep-out distance is drawn.", "\"strictest\""));
}
