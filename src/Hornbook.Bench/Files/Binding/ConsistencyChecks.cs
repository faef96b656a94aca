using Hornbook.Bench.Files.Format;
using Hornbook.Bench.Files.Quantities;
using Hornbook.Bench.Files.Syntax;
using Hornbook.Physics;

namespace Hornbook.Bench.Files.Binding;

/// <summary>What no single value shows: sizes against each other, names that must exist, limits in order.</summary>
/// <param name="problems">Takes what is found.</param>
/// <param name="isWhole">Whether every line of the file could be read: else a key that is not there may be among the others.</param>
internal sealed class ConsistencyChecks(ProblemList problems, bool isWhole)
{
    /// <summary>Mouths up to this many wavelengths are computed: beyond, the currents would take minutes [-].</summary>
    private const double MostWavelengths = 30.0;

    /// <summary>Two mouths closer than this stand in each other [m].</summary>
    private const double Touching = 0.01;

    // The keys of a demonstration that name one panel.
    private static readonly string[] PanelKeys = ["panel", "first", "second", "grid", "mirror", "screen"];

    /// <summary>Checks a file whose single values were checked; what is not there is left out.</summary>
    internal void Check(BoundTable file)
    {
        IReadOnlyList<BoundItem> antennas = file.List("antennas");
        foreach (BoundTable antenna in antennas.Select(item => item.Value).OfType<BoundTable>())
        {
            CheckMouth(antenna, file);
        }

        CheckPanels(file);
        string[] names = [.. antennas.Select(item => item.Name)];
        CheckEnds(file, names);
        CheckDetection(file);
        CheckDemonstrations(file, names, [.. file.List("panels").Select(item => item.Name)]);
    }

    private void CheckMouth(BoundTable antenna, BoundTable file)
    {
        if (antenna.Has("guide"))
        {
            (double width, double height) = GuideSize.Of(antenna);
            AtLeastGuide(antenna, "mouth_width", width, "wide");
            AtLeastGuide(antenna, "mouth_height", height, "high");
        }

        if (file.Has("frequency"))
        {
            double most = MostWavelengths * FreeSpace.Wavelength(file.Number("frequency"));
            NotTooLarge(antenna, "mouth_width", most);
            NotTooLarge(antenna, "mouth_height", most);
        }
    }

    private void AtLeastGuide(BoundTable antenna, string key, double guide, string what)
    {
        if (antenna.Has(key) && antenna.Number(key) < guide * (1.0 - 1e-9))
        {
            string smallest = QuantityText.Write(guide, Quantity.Length.FindUnit("mm")!, Quantity.Length with { Resolution = 1e-5 });
            Add(antenna, key, "is smaller than the guide", $"the guide is {smallest} {what}", $"type {key} = \"{smallest}\" or more");
        }
    }

    private void NotTooLarge(BoundTable antenna, string key, double most)
    {
        if (antenna.Has(key) && antenna.Number(key) > most)
        {
            string largest = QuantityText.Write(Math.Floor(most * 100.0) / 100.0, Quantity.Length.Units[0], Quantity.Length);
            Add(antenna, key, "is too large at this frequency", $"mouths up to {MostWavelengths:0} wavelengths are computed", $"type {key} = \"{largest}\" or less");
        }
    }

    private void CheckPanels(BoundTable file)
    {
        PanelChecks checks = new(problems);
        if (file.Table("table") is BoundTable table)
        {
            checks.CheckTop(table);
        }

        BoundTable[] panels = [.. file.List("panels").Select(item => item.Value).OfType<BoundTable>()];
        Array.ForEach(panels, checks.Check);
        if (isWhole && problems.Found.Count == 0)
        {
            Array.ForEach(panels, new OutlineChecks(problems, file.Number("frequency")).Check);
        }
    }

    private void CheckEnds(BoundTable file, string[] antennas)
    {
        BoundTable? source = file.Table("source"), receiver = file.Table("receiver");
        foreach (BoundTable end in new[] { source, receiver }.OfType<BoundTable>())
        {
            if (end.TextOrNull("antenna") is string name)
            {
                Known(name, "antenna", end.NodeOf("antenna").Place, antennas);
            }
        }

        if (source is not null && source.Has("power") && source.Has("worst_case_power") && source.Number("worst_case_power") < source.Number("power"))
        {
            Add(source, "worst_case_power", "is less than the power", "the worst case is the power or more", $"type worst_case_power = {Raw(source, "power")} or more");
        }

        if (source is not null && receiver is not null && Place(source) is Vector here && Place(receiver) is Vector there && (here - there).Length < Touching)
        {
            Add(receiver, "x", "puts the receiver into the source", "the mouths stand 1 cm apart or more", "type another place, like x = \"1 m\"");
        }
    }

    private void CheckDetection(BoundTable file)
    {
        if (file.Table("amplifier") is BoundTable amplifier)
        {
            InOrder(amplifier, "lowest", "highest", amplifier.Number("lowest", 0.0));
        }

        if (file.Table("tone") is BoundTable tone)
        {
            InOrder(tone, "lowest", "highest", tone.Number("lowest", 20.0));
            if (tone.Has("slope") && tone.Number("slope") == 0.0)
            {
                Add(tone, "slope", "gives the same tone for every voltage", "any slope but 0 fits", $"type slope = {(tone.Word == DetectionFormat.Linear ? "\"180 Hz/V\"" : "\"0.5 oct/V\"")}");
            }
        }

        if (file.Table("detector") is BoundTable detector && detector.Word == DetectionFormat.Table)
        {
            CheckPoints(detector);
        }
    }

    private void CheckPoints(BoundTable detector)
    {
        BoundItem[] rising = [.. detector.List("points").Where(IsWhole).OrderBy(Power)];
        foreach ((BoundItem lower, BoundItem upper) in rising.Zip(rising.Skip(1)))
        {
            if (Power(upper) <= Power(lower) || Volts(upper) <= Volts(lower))
            {
                problems.Add(
                    upper.Place, "this point gives no more voltage, or no more power, than the one below it", "voltage rises with power from point to point",
                    "correct the point or take it away");
            }
        }

        static bool IsWhole(BoundItem item) => item.Value is BoundTable point && point.Has("power") && point.Has("voltage");
        static double Power(BoundItem item) => ((BoundTable)item.Value).Number("power");
        static double Volts(BoundItem item) => ((BoundTable)item.Value).Number("voltage");
    }

    private void CheckDemonstrations(BoundTable file, string[] antennas, string[] panels)
    {
        HashSet<string> taken = [];
        foreach (BoundTable shown in file.List("demonstrations").Select(item => item.Value).OfType<BoundTable>())
        {
            if (shown.TextOrNull("name") is string name && !taken.Add(name))
            {
                Add(shown, "name", "is taken by a demonstration above", "each has a name of its own", $"type name = \"{name}-2\"");
            }

            foreach (BoundItem item in shown.List("antennas"))
            {
                Known((string)item.Value, "antennas", item.Place, antennas);
            }

            foreach (BoundItem item in shown.List("panels"))
            {
                KnownPanel((string)item.Value, "panels", item.Place, panels);
            }

            foreach (string key in PanelKeys.Where(shown.Has))
            {
                KnownPanel(shown.Text(key), key, shown.NodeOf(key).Place, panels);
            }

            if (shown.Has("from") && shown.Has("to") && shown.Number("from") == shown.Number("to"))
            {
                Add(shown, "to", "is where the demonstration begins", "from and to differ", "type another value");
            }
        }
    }

    private void Known(string name, string key, Place place, string[] antennas)
    {
        if (antennas.Length > 0)
        {
            Among("antennas", name, key, place, antennas);
        }
    }

    private void KnownPanel(string name, string key, Place place, string[] panels)
    {
        if (panels.Length == 0)
        {
            problems.Add(place, $"{key} = {QuantityText.Quoted(name)} is not among the panels", "the file has none", $"add a table [panels.{name}]");
            return;
        }

        Among("panels", name, key, place, panels);
    }

    private void Among(string things, string name, string key, Place place, string[] names)
    {
        if (!names.Contains(name, StringComparer.Ordinal))
        {
            string[] quoted = [.. names.Select(one => $"\"{one}\"")];
            string near = Spelling.Nearest(name, names) ?? names[0];
            problems.Add(place, $"{key} = {QuantityText.Quoted(name)} is not among the {things}", $"{Shown.Words(quoted)} fits", $"type \"{near}\"");
        }
    }

    private void InOrder(BoundTable table, string lower, string upper, double lowest)
    {
        if (table.Has(upper) && table.Number(upper) <= lowest)
        {
            Add(table, upper, $"is not above {lower}", $"{upper} is more than {lower}", "type a higher value, or lower the other");
        }
    }

    private static Vector? Place(BoundTable end) => end.Has("x") && end.Has("z") ? new Vector(end.Number("x"), end.Number("y", 0.0), end.Number("z")) : null;

    private static string Raw(BoundTable table, string key) => ValueReader.Raw(table.NodeOf(key));

    private void Add(BoundTable table, string key, string what, string fits, string type) =>
        problems.Add(table.NodeOf(key).Place, $"{key} = {Raw(table, key)} {what}", fits, type);
}
