using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Files.Format;

/// <summary>The keys of a demonstration.</summary>
internal static class DemonstrationFormat
{
    internal const string BeamWidth = "beam width";
    internal const string AntennaChange = "antenna change";
    internal const string Distance = "distance";
    internal const string Polarisation = "polarisation";
    internal const string GridTurn = "grid turn";
    internal const string GridRevival = "grid revival";
    internal const string PanelChange = "panel change";
    internal const string Reflection = "reflection";
    internal const string StandingWave = "standing wave";
    internal const string Slits = "slits";
    internal const string Edge = "edge";
    internal const string Lloyd = "lloyd mirror";
    internal const string ZonePlate = "zone plate";
    internal const string Dish = "dish";
    internal const string ClosedBox = "closed box";
    internal const string Brewster = "brewster angle";
    internal const string HalfMirrors = "half mirrors";
    internal const string CircularPolarisation = "circular polarisation";
    internal const string GridGap = "grid gap";
    internal const string SourceEnd = "source";
    internal const string ReceiverEnd = "receiver";

    private static readonly KeyRule End = new("end", new ChoiceRule(ReceiverEnd, SourceEnd), "Which end is turned or changed.");

    private static readonly KeyRule Panel = new("panel", new PanelNameRule("\"strips\""), "The panel that is put in and moved.");

    private static readonly KeyRule Points = new("points", new CountRule(3, 2001, "121"), "How many settings are computed.", "121");

    /// <summary>A demonstration.</summary>
    internal static TableShape Demonstration { get; } = new(
        "the demonstration",
        new KeyRule("name", new NameRule("\"beam-width\""), "Short name, used on the command line."),
        new KeyRule("place", new CountRule(1, 50, "2"), "Its place in the show; those without one come in the order of the file.", "in its turn"),
        new KeyRule("duration", new QuantityRule(Quantity.Duration, "10 s", "60 min", "\"4 min\""), "How long it takes, changes before it included.", "\"3 min\""),
        new KeyRule("aside", new TruthRule("true"), "Whether it is left out of the show.", "false"))
    {
        Kind = new KeyRule("kind", new ChoiceRule(BeamWidth, AntennaChange, Distance, Polarisation, GridTurn, GridRevival, PanelChange, Reflection, StandingWave, Slits, Edge, Lloyd, ZonePlate, Dish, ClosedBox, Brewster, HalfMirrors, CircularPolarisation, GridGap), "What is shown."),
        Variants =
        [
            new(BeamWidth, End, Angle("from", "\"-60 deg\"", "First turn off the present one."), Angle("to", "\"60 deg\"", "Last turn off the present one."), Points),
            new(AntennaChange, End, new("antennas", new ListRule(new AntennaNameRule("\"large-horn\""), 2, 20, "[\"large-horn\", \"small-horn\"]"), "The antennas, in the order shown.")),
            new(Distance, Metres("from", "\"30 cm\"", "First distance from mouth to mouth."), Metres("to", "\"1.2 m\"", "Last distance from mouth to mouth."), Points),
            new(Polarisation, Angle("from", "\"0 deg\"", "First roll off the present one."), Angle("to", "\"90 deg\"", "Last roll off the present one."), Points),
            new(GridTurn, Panel, Angle("from", "\"0 deg\"", "First roll of the grid off its present one."), Angle("to", "\"180 deg\"", "Last roll of the grid."), Points),
            new(GridRevival, Panel, Angle("from", "\"0 deg\"", "First roll of the grid off its present one."), Angle("to", "\"180 deg\"", "Last roll of the grid."), Points),
            new(PanelChange, new KeyRule("panels", new ListRule(new PanelNameRule("\"plywood\""), 1, 20, "[\"plywood\", \"glass\"]"), "The panels, in the order shown.")),
            .. WaveFormat.Variants,
            .. FieldFormat.Variants,
        ],
    };

    private static KeyRule Angle(string name, string example, string meaning) =>
        new(name, new QuantityRule(Quantity.Angle, "-360 deg", "360 deg", example), meaning);

    private static KeyRule Metres(string name, string example, string meaning) =>
        new(name, new QuantityRule(Quantity.Length, "1 cm", "20 m", example), meaning);
}
