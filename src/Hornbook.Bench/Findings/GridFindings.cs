using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Bench.Findings;

/// <summary>Whether grids at hand are fine enough that one wave goes on and one comes back, and no others.</summary>
internal static class GridFindings
{
    internal static IEnumerable<Finding> Of(BenchPlan plan) => plan.Panels.SelectMany(
        panel => Grid(panel.Panel.Sheet) is { } grid ? Of(panel, grid, plan.Frequency) : []);

    private static MetalGrid? Grid(ISheet sheet) => sheet switch
    {
        StripGrid grid => new("strip", grid.Period, "strip_width", grid.StripWidth),
        BoardedStripGrid grid => Grid(grid.Strips),
        WireGrid grid => new("wire", grid.Period, "wire_diameter", grid.Diameter),
        TurnedSheet turned => Grid(turned.Sheet),
        _ => null,
    };

    // The sheet itself says from which angle on a second wave leaves.
    private static IEnumerable<Finding> Of(BenchPanel panel, MetalGrid grid, double frequency)
    {
        double angle = panel.Panel.Sheet.OneWaveUpTo(frequency);
        if (angle < 0.5 * Math.PI)
        {
            string from = angle > 0.0 ? $"from {InWords.Angle(angle)} off its normal on" : "at every angle";
            yield return new Finding(angle > 0.0 ? Severity.Note : Severity.Weakens, "grid-scatters",
                $"The {grid.Thing}s of '{panel.Name}' are {InWords.Length(grid.Period)} apart, so that waves are thrown into further directions {from}.",
                "Power goes where nobody looks for it; the prediction leaves these waves out.",
                Finer(panel.Name, grid, InWords.TwoDigitsDown(0.5 * FreeSpace.Wavelength(frequency))));
        }
    }

    /// <summary>The same share of metal at a shorter period: what is stopped and let through stays of its kind, and a board stays what it is.</summary>
    private static Mend Finer(string panel, MetalGrid grid, double period)
    {
        double metal = grid.Metal * period / grid.Period;
        return Rearranging.Setting(
            $"Build it with {grid.Thing}s of {LengthText.Typed(metal)}, {LengthText.Typed(period)} from {grid.Thing} to {grid.Thing}.",
            new MendedKey($"panels.{panel}.period", LengthText.Typed(period)),
            new MendedKey($"panels.{panel}.{grid.MetalKey}", LengthText.Typed(metal)));
    }

    /// <summary>What is metal in a grid.</summary>
    /// <param name="Thing">What it consists of: "strip", "wire".</param>
    /// <param name="Period">From the middle of one to the middle of the next [m].</param>
    /// <param name="MetalKey">The key of the bench file that says how wide they are.</param>
    /// <param name="Metal">How wide they are [m].</param>
    private sealed record MetalGrid(string Thing, double Period, string MetalKey, double Metal);
}
