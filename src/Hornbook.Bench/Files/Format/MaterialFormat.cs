using Hornbook.Bench.Files.Quantities;
using Hornbook.Physics.Media;

namespace Hornbook.Bench.Files.Format;

/// <summary>What waves can enter: a material by its name, or by its two numbers.</summary>
internal static class MaterialFormat
{
    private static readonly TableShape Numbers = new(
        "the material",
        new("permittivity", new RatioRule(1.0, 1000.0, "2.6"), "Relative permittivity ε', near the bench's frequency."),
        new("loss_tangent", new RatioRule(0.0, 10.0, "0.01"), "ε''/ε'.", "0"));

    /// <summary>A name, or a table of two numbers.</summary>
    internal static WordOrTableRule Material { get; } = new(new ChoiceRule([.. Names()]), new TableRule(Numbers));

    /// <summary>A layer of a sheet.</summary>
    internal static TableShape Layer { get; } = new(
        "the layer",
        new("material", Material, "What it is made of."),
        new("thickness", Thickness("\"3 mm\""), "From face to face."));

    /// <summary>What carries strips.</summary>
    internal static TableRule Board { get; } = new(
        new(
            "the board",
            new("material", Material, "What it is made of."),
            new("thickness", Thickness("\"1.6 mm\""), "From face to face.")),
        "{ material = \"FR-4\", thickness = \"1.6 mm\" }");

    /// <summary>The thickness of a sheet.</summary>
    internal static QuantityRule Thickness(string example) => new(Quantity.Length, "1 µm", "1 m", example);

    /// <summary>The plastic of most demonstrations first, since it is the example.</summary>
    private static IEnumerable<string> Names() => Dielectrics.All.Select(material => material.Name).OrderBy(name => name != "acrylic glass");
}
