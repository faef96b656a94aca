using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Bench.Findings;

/// <summary>Whether grids at hand are fine enough that one wave goes on and one comes back, and no others.</summary>
internal static class GridFindings
{
    internal static IEnumerable<Finding> Of(BenchPlan plan) => plan.Panels.SelectMany(
        panel => Grid(panel.Panel.Sheet) is (string things, double period) ? Of(panel, things, period, plan.Frequency) : []);

    private static (string Things, double Period)? Grid(ISheet sheet) => sheet switch
    {
        StripGrid grid => ("strips", grid.Period),
        BoardedStripGrid grid => ("strips", grid.Strips.Period),
        WireGrid grid => ("wires", grid.Period),
        TurnedSheet turned => Grid(turned.Sheet),
        _ => null,
    };

    // The sheet itself says from which angle on a second wave leaves.
    private static IEnumerable<Finding> Of(BenchPanel panel, string things, double period, double frequency)
    {
        double angle = panel.Panel.Sheet.OneWaveUpTo(frequency);
        if (angle < 0.5 * Math.PI)
        {
            string from = angle > 0.0 ? $"from {InWords.Angle(angle)} off its normal on" : "at every angle";
            yield return new Finding(angle > 0.0 ? Severity.Note : Severity.Weakens, "grid-scatters",
                $"The {things} of '{panel.Name}' are {InWords.Length(period)} apart, so that waves are thrown into further directions {from}.",
                "Power goes where nobody looks for it; the prediction leaves these waves out.",
                new Mend($"Build it with less than {InWords.Length(0.5 * FreeSpace.Wavelength(frequency))} from {things[..^1]} to {things[..^1]}."));
        }
    }
}
