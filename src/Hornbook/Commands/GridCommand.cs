using System.CommandLine;
using Hornbook.Commands.Reports;
using Hornbook.Commands.Typing;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Commands;

/// <summary>grid: what a grid of metal strips or wires stops and lets through.</summary>
internal static class GridCommand
{
    // The sums behind a grid are made for strips that are neither threads nor nearly a plate, and for wires that do not nearly touch.
    private const double Narrowest = 0.01;
    private const double Widest = 0.99;
    private const double Thinnest = 0.001;
    private const double Thickest = 0.4;

    internal static Command Create()
    {
        Option<double?> period = QuantityOption.Create("--period", Span.GridPeriod, "5 mm", "From the middle of one strip or wire to the middle of the next.");
        Option<double?> strip = QuantityOption.Create("--strip", Span.GridPeriod, "2.5 mm", "Width of the metal; half the period unless given.");
        Option<double?> wire = QuantityOption.Create("--wire", Span.GridPeriod, "0.8 mm", "Round wires of this diameter in place of strips.");
        Option<Layer?> board = LayerArgument.CreateOption("--board", "FR-4 1.6 mm", "What the strips are on; air unless given.");
        Option<double?> frequency = QuantityOption.Create("--frequency", Span.Frequency, "10.525 GHz", "Frequency.");
        (period.Required, frequency.Required) = (true, true);
        Command command = new ExampledCommand("grid", "Says what a grid of metal strips or wires stops and lets through.")
        {
            Examples =
            [
                ("hornbook grid --period \"5 mm\" --frequency \"10.525 GHz\"", "As much metal as gap"),
                ("hornbook grid --period \"5 mm\" --strip \"2 mm\" \\\n      --board \"FR-4 1.6 mm\" --frequency \"10.525 GHz\"", "Etched on a circuit board"),
                ("hornbook grid --period \"8 mm\" --wire \"0.8 mm\" --frequency \"10.525 GHz\"", "Wires on a frame"),
            ],
        };
        foreach (Option option in new Option[] { period, strip, wire, board, frequency })
        {
            command.Add(option);
        }

        Reporting.Attach(command, (typed, _, _) =>
        {
            double p = typed.GetRequiredValue(period)!.Value, f = typed.GetRequiredValue(frequency)!.Value;
            GridReport report = typed.GetValue(wire) is { } diameter
                ? Wires(p, diameter, f, typed.GetValue(strip), typed.GetValue(board))
                : Strips(p, typed.GetValue(strip) ?? (0.5 * p), f, typed.GetValue(board));
            return new Outcome(report, ExitCode.Fine);
        });
        return command;
    }

    private static GridReport Strips(double period, double width, double frequency, Layer? board)
    {
        if (!(width >= Narrowest * period && width <= Widest * period))
        {
            throw new BadInputException("--strip: the metal must take from 1 % to 99 % of the period");
        }

        StripGrid strips = new(period, width);
        return board is null
            ? GridReport.Of(strips, frequency)
            : GridReport.Of(new BoardedStripGrid(strips, new LayeredSheet(board)), frequency);
    }

    private static GridReport Wires(double period, double diameter, double frequency, double? strip, Layer? board)
    {
        if (strip is not null || board is not null)
        {
            throw new BadInputException("--wire: a grid has wires or strips; wires stand in air, without --strip and --board");
        }

        return diameter >= Thinnest * period && diameter <= Thickest * period
            ? GridReport.Of(new WireGrid(period, diameter), frequency)
            : throw new BadInputException("--wire: the diameter must be from 0.1 % to 40 % of the period");
    }
}
