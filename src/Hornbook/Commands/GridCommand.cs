using System.CommandLine;
using Hornbook.Commands.Reports;
using Hornbook.Commands.Typing;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Commands;

/// <summary>grid: what a grid of metal strips stops and lets through.</summary>
internal static class GridCommand
{
    // The sums behind a grid are made for strips that are neither threads nor nearly a plate.
    private const double Narrowest = 0.01;
    private const double Widest = 0.99;

    internal static Command Create()
    {
        Option<double?> period = QuantityOption.Create("--period", Span.GridPeriod, "5 mm", "From the middle of one strip to the middle of the next.");
        Option<double?> strip = QuantityOption.Create("--strip", Span.GridPeriod, "2.5 mm", "Width of the metal; half the period unless given.");
        Option<double?> frequency = QuantityOption.Create("--frequency", Span.Frequency, "10.525 GHz", "Frequency.");
        (period.Required, frequency.Required) = (true, true);
        Command command = new ExampledCommand("grid", "Says what a grid of metal strips stops and lets through.")
        {
            Examples =
            [
                ("hornbook grid --period \"5 mm\" --frequency \"10.525 GHz\"", "As much metal as gap"),
                ("hornbook grid --period \"8 mm\" --strip \"2 mm\" --frequency \"10.525 GHz\"", "Narrow strips"),
            ],
        };
        foreach (Option option in new Option[] { period, strip, frequency })
        {
            command.Add(option);
        }

        Reporting.Attach(command, (typed, _, _) =>
        {
            double p = typed.GetRequiredValue(period)!.Value, w = typed.GetValue(strip) ?? (0.5 * p);
            return w >= Narrowest * p && w <= Widest * p
                ? new Outcome(GridReport.Of(new StripGrid(p, w), typed.GetRequiredValue(frequency)!.Value), ExitCode.Fine)
                : throw new BadInputException("--strip: the metal must take from 1 % to 99 % of the period");
        });
        return command;
    }
}
