using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Files.Binding;

/// <summary>What no single value of a panel shows: its sizes against each other.</summary>
/// <param name="problems">Takes what is found.</param>
internal sealed class PanelChecks(ProblemList problems)
{
    // Strips outside this share of the period are not computed [-].
    private const double NarrowestStrip = 0.01;
    private const double WidestStrip = 0.99;

    // And wires outside this one [-].
    private const double ThinnestWire = 0.001;
    private const double ThickestWire = 0.4;

    /// <summary>Checks a panel whose single values were checked.</summary>
    internal void Check(BoundTable panel)
    {
        if (panel.Has("period") && panel.Has("strip_width"))
        {
            CheckStrips(panel, panel.Number("period"), panel.Number("strip_width"));
        }

        if (panel.Has("period") && panel.Has("wire_diameter"))
        {
            CheckWires(panel, panel.Number("period"), panel.Number("wire_diameter"));
        }

        if (panel.Has("reflection") && panel.Has("transmission"))
        {
            CheckBalance(panel, panel.Number("reflection"), panel.Number("transmission"));
        }
    }

    private void CheckBalance(BoundTable panel, double reflection, double transmission)
    {
        // A rating of 0 dB and nothing else is a mirror and fits, although its conversion may round the last bit.
        if ((reflection * reflection) + (transmission * transmission) > 1.0 + 1e-12)
        {
            Add(panel, "transmission", "lets through more than is left", "the squares of |R| and |T| are one at most, together", "type less");
        }
    }

    /// <summary>Checks the table: its top has a material and a thickness, or neither.</summary>
    internal void CheckTop(BoundTable table)
    {
        (string given, string missing, string example) = table.Has("material") ? ("material", "thickness", "\"25 mm\"") : ("thickness", "material", "\"plywood\"");
        if (table.Has(given) && table.Node.Find(missing) is null)
        {
            Add(table, given, $"stands without a {missing}", $"the top has a material and a thickness, or neither", $"type {missing} = {example} below it");
        }
    }

    private void CheckStrips(BoundTable panel, double period, double width) => CheckShare(
        panel, "strip_width", width / period, (NarrowestStrip, WidestStrip), "leaves no gap", "strips take from 1 to 99 % of the period", Typed(0.5 * period));

    private void CheckWires(BoundTable panel, double period, double diameter) => CheckShare(
        panel, "wire_diameter", diameter / period, (ThinnestWire, ThickestWire), "is too thick", "wires take from 0.1 to 40 % of the period", Typed(0.1 * period));

    private void CheckShare(BoundTable panel, string key, double share, (double Least, double Most) range, string tooMuch, string fits, string type)
    {
        const double slack = 1e-9;
        string told = ValueReader.Raw(panel.NodeOf("period"));
        if (share > range.Most * (1.0 + slack))
        {
            Add(panel, key, $"{tooMuch} in a period of {told}", fits, $"type less, like {key} = \"{type}\"");
        }
        else if (share < range.Least * (1.0 - slack))
        {
            Add(panel, key, $"is very little in a period of {told}", fits, $"type more, like {key} = \"{type}\"");
        }
    }

    private static string Typed(double length) => QuantityText.Write(length, Quantity.Length.FindUnit("mm")!, Quantity.Length);

    private void Add(BoundTable table, string key, string what, string fits, string type) =>
        problems.Add(table.NodeOf(key).Place, $"{key} = {ValueReader.Raw(table.NodeOf(key))} {what}", fits, type);
}
