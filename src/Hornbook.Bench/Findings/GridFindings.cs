using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Bench.Findings;

/// <summary>Whether grids at hand are fine enough that one wave goes on and one comes back, and no others.</summary>
internal static class GridFindings
{
    internal static IEnumerable<Finding> Of(BenchPlan plan)
    {
        double wavelength = Constants.SpeedOfLight / plan.Frequency;
        return plan.Panels.SelectMany(panel => Grid(panel.Panel.Sheet) is StripGrid grid ? Of(panel, grid, wavelength) : []);
    }

    private static StripGrid? Grid(ISheet sheet) => sheet switch
    {
        StripGrid grid => grid,
        TurnedSheet turned => Grid(turned.Sheet),
        _ => null,
    };

    // A second wave leaves as soon as p (1 + sin θ) > λ, for waves that slant across the strips.
    private static IEnumerable<Finding> Of(BenchPanel panel, StripGrid grid, double wavelength)
    {
        double sine = (wavelength / grid.Period) - 1.0;
        if (sine < 1.0)
        {
            string from = sine > 0.0 ? $"from {InWords.Angle(Math.Asin(sine))} off its normal on" : "at every angle";
            yield return new Finding(sine > 0.0 ? Severity.Note : Severity.Weakens, "grid-scatters",
                $"The strips of '{panel.Name}' are {InWords.Length(grid.Period)} apart, so that waves are thrown into further directions {from}.",
                "Power goes where nobody looks for it; the prediction leaves these waves out.",
                new Mend($"Build it with less than {InWords.Length(0.5 * wavelength)} from strip to strip."));
        }
    }
}
