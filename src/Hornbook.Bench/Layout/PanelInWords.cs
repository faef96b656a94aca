using Hornbook.Bench.Demonstrations;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Bench.Layout;

/// <summary>A panel as one would describe it to somebody who fetches it.</summary>
internal static class PanelInWords
{
    private const double RoundTo = 1e-3;

    /// <summary>What it is: "strip grid, 15 cm × 15 cm, strips of 2.5 mm every 5 mm at 45° to its upright".</summary>
    internal static string What(BenchPanel panel) =>
        string.Join(", ", new[] { panel.Kind, Size(panel.Panel.Surface), Make(panel.Panel.Sheet) }.Where(part => part.Length > 0));

    /// <summary>Where it is: "at x = 70 cm, y = 0 mm, z = 25 cm, turned 45°", or "lies aside".</summary>
    internal static string Where(BenchPanel panel) => panel.Stands ? $"at {Place(panel.Pose.Position)}{Attitude(panel.Pose)}" : "lies aside";

    private static string Size(PanelSurface surface) => IsRound(surface)
        ? $"{InWords.Length(surface.Width)} across"
        : $"{InWords.Length(surface.Width)} × {InWords.Length(surface.Height)}";

    /// <summary>Whether its outer edge is a circle about its middle.</summary>
    private static bool IsRound(PanelSurface surface)
    {
        Vector[] outer = [.. surface.Loops.MaxBy(loop => loop.Max(point => point.Length))!.Select(point => point with { X = 0.0 })];
        double radius = outer.Max(point => point.Length);
        return outer.Zip([.. outer[1..], outer[0]], (from, to) => (from + to) * 0.5).All(middle => middle.Length > radius * (1.0 - RoundTo));
    }

    private static string Make(ISheet sheet) => sheet switch
    {
        TurnedSheet { Sheet: BoardedStripGrid grid } turned => $"{Make(new TurnedSheet(grid.Strips, turned.Angle))} on {Make(grid.Board)}",
        TurnedSheet turned => $"{Make(turned.Sheet)} at {InWords.Angle(turned.Angle)} to its upright",
        StripGrid grid => $"strips of {InWords.Length(grid.StripWidth)} every {InWords.Length(grid.Period)}",
        BoardedStripGrid grid => $"{Make(grid.Strips)} on {Make(grid.Board)}",
        WireGrid grid => $"wires of {InWords.Length(grid.Diameter)} every {InWords.Length(grid.Period)}",
        LayeredSheet layered => InWords.Joined([.. layered.Layers.Select(layer => $"{InWords.Length(layer.Thickness)} of {layer.Material.Name}")]),
        ImpedanceSheet { OhmsPerSquare: { Imaginary: 0.0 } resistance } => $"{InWords.Rounded(resistance.Real, 3)} Ω per square",
        ImpedanceSheet mirror => $"throws back {InWords.Rounded(100.0 * Reflected(mirror), 2)} % of the power",
        Absorber absorber => $"throws back {Level(absorber.Returned)}, lets pass {Level(absorber.Passed)}",
        _ => string.Empty,
    };

    /// <summary>|R|² at right angles of a film without loss.</summary>
    private static double Reflected(ImpedanceSheet mirror)
    {
        double reactance = 2.0 * mirror.OhmsPerSquare.Imaginary / Constants.VacuumImpedance;
        return 1.0 / (1.0 + (reactance * reactance));
    }

    private static string Level(double share) => share > 0.0 ? InWords.Decibels(10.0 * Math.Log10(share)) : "nothing";

    private static string Place(Vector place) => $"x = {InWords.Length(place.X)}, y = {InWords.Length(place.Y)}, z = {InWords.Length(place.Z)}";

    private static string Attitude(Pose pose) => string.Concat(
        new[] { ("turned", pose.Turn), ("tilted", pose.Tilt), ("rolled", pose.Roll) }
            .Where(move => move.Item2 != 0.0)
            .Select(move => $", {move.Item1} {InWords.Angle(move.Item2)}"));
}
