using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Bench.Files.Format;

namespace Hornbook.Bench.Files.Binding;

/// <summary>Makes a demonstration from a table in which nothing is wrong.</summary>
internal static class DemonstrationComposer
{
    /// <summary>The demonstration.</summary>
    internal static Demonstration Compose(BoundTable shown) => OfKind(shown) with
    {
        Showing = new Showing(
            shown.Has("place") ? shown.Count("place", 0) : null, shown.Number("duration", Showing.Usual.Duration), shown.IsTrue("aside")),
    };

    private static Demonstration OfKind(BoundTable shown)
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
            DemonstrationFormat.Reflection => new ReflectionDemonstration(name, shown.Text("panel"), shown.Number("incidence"), shown.Number("from"), shown.Number("to"), points)
            {
                Distance = Distance(shown),
            },
            DemonstrationFormat.StandingWave => new StandingWaveDemonstration(
                name, shown.Text("panel"), shown.Number("before", 0.1), shown.Number("from"), shown.Number("to"), points),
            DemonstrationFormat.Slits => new SlitsDemonstration(name, shown.Text("panel"), shown.Number("from"), shown.Number("to"), points)
            {
                Distance = Distance(shown),
            },
            DemonstrationFormat.Edge => new EdgeDemonstration(name, shown.Text("panel"), shown.Number("from"), shown.Number("to"), points),
            DemonstrationFormat.Lloyd => new LloydDemonstration(name, shown.TextOrNull("panel"), shown.Number("from"), shown.Number("to"), points),
            DemonstrationFormat.ZonePlate => new ZonePlateDemonstration(name, shown.Text("panel"), shown.Number("from"), shown.Number("to"), points),
            DemonstrationFormat.Dish => new DishDemonstration(name, shown.Text("panel"), shown.Number("from"), shown.Number("to"), points),
            DemonstrationFormat.ClosedBox => new ClosedBoxDemonstration(name, shown.Text("panel")),
            DemonstrationFormat.Brewster => new BrewsterDemonstration(name, shown.Text("panel"), shown.Number("from"), shown.Number("to"), points)
            {
                Distance = Distance(shown),
                Screen = shown.TextOrNull("screen"),
            },
            DemonstrationFormat.HalfMirrors => new HalfMirrorsDemonstration(name, shown.Text("first"), shown.Text("second"), shown.Number("from"), shown.Number("to"), points),
            DemonstrationFormat.CircularPolarisation => new CircularPolarisationDemonstration(
                name, shown.Text("grid"), shown.Text("mirror"), shown.Number("gap"), Slant(shown), shown.Number("from"), shown.Number("to"), points)
            {
                Distance = Distance(shown),
            },
            DemonstrationFormat.GridGap => new GridGapDemonstration(
                name, shown.Text("grid"), shown.Text("mirror"), Slant(shown), shown.Number("from"), shown.Number("to"), points)
            {
                Distance = Distance(shown),
            },
            _ => throw new InvalidOperationException($"'{shown.Word}' is a kind of demonstration that the format has and the composer does not"),
        };
    }

    private static double? Distance(BoundTable shown) => shown.Has("distance") ? shown.Number("distance") : null;

    private static double Slant(BoundTable shown) => shown.Number("incidence", Math.PI / 9.0);

    private static string[] Names(BoundTable shown, string key) => [.. shown.List(key).Select(item => (string)item.Value)];

    private static BenchEnd End(BoundTable shown) => shown.Text("end") == DemonstrationFormat.SourceEnd ? BenchEnd.Source : BenchEnd.Receiver;
}
