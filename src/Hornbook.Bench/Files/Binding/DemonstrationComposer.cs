using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Bench.Files.Format;

namespace Hornbook.Bench.Files.Binding;

/// <summary>Makes a demonstration from a table in which nothing is wrong.</summary>
internal static class DemonstrationComposer
{
    /// <summary>The demonstration.</summary>
    internal static Demonstration Compose(BoundTable shown)
    {
        string name = shown.Text("name");
        int points = shown.Count("points", 121);
        return shown.Word switch
        {
            DemonstrationFormat.BeamWidth => new BeamWidthDemonstration(name, End(shown), shown.Number("from"), shown.Number("to"), points),
            DemonstrationFormat.AntennaChange => new AntennaChangeDemonstration(name, End(shown), Names(shown, "antennas")),
            DemonstrationFormat.Distance => new DistanceDemonstration(name, shown.Number("from"), shown.Number("to"), points),
            DemonstrationFormat.Polarisation => new PolarisationDemonstration(name, shown.Number("from"), shown.Number("to"), points),
            DemonstrationFormat.GridTurn => new GridTurnDemonstration(name, shown.Text("panel"), shown.Number("from"), shown.Number("to"), points),
            DemonstrationFormat.GridRevival => new GridRevivalDemonstration(name, shown.Text("panel"), shown.Number("from"), shown.Number("to"), points),
            DemonstrationFormat.PanelChange => new PanelChangeDemonstration(name, Names(shown, "panels")),
            _ => throw new InvalidOperationException($"'{shown.Word}' is a kind of demonstration that the format has and the composer does not"),
        };
    }

    private static string[] Names(BoundTable shown, string key) => [.. shown.List(key).Select(item => (string)item.Value)];

    private static BenchEnd End(BoundTable shown) => shown.Text("end") == DemonstrationFormat.SourceEnd ? BenchEnd.Source : BenchEnd.Receiver;
}
