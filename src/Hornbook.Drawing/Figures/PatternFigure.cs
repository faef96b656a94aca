using System.Globalization;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;

namespace Hornbook.Drawing.Figures;

/// <summary>The far pattern of an antenna in its E plane, its H plane and between them; greyed where it is not to be trusted.</summary>
public static class PatternFigure
{
    private const double LowestDb = -40.0;
    private const double HighestDb = 2.0;
    private const int Points = 361;
    private const double Edge = 0.5 * Math.PI;

    /// <summary>The figure of an antenna.</summary>
    /// <param name="name">What the antenna is called.</param>
    /// <param name="antenna">The antenna.</param>
    public static Figure Of(string name, Antenna antenna)
    {
        ArgumentNullException.ThrowIfNull(antenna);
        string frequency = string.Create(CultureInfo.InvariantCulture, $"{antenna.Frequency / 1e9:0.###} GHz");
        double trusted = Degrees(FarPattern.TrustedAngle);
        Panel panel = new("level over that on the axis [dB]", Traces(antenna))
        {
            Lowest = LowestDb,
            Highest = HighestDb,
            Levels = [new Mark(Decibels.FromRatio(0.5), "half power")],
            Greyed = [(-Degrees(Edge), -trusted), (trusted, Degrees(Edge))],
        };
        return LineFigure.Of($"{name} at {frequency}", Description(antenna), new HorizontalAxis("off the axis [deg]"), [panel]);
    }

    // A field that lies below the lower edge everywhere is left out of the picture and its legend; the numbers have it.
    private static Trace[] Traces(Antenna antenna)
    {
        Trace[] all =
        [
            Cut("E plane", antenna, PatternPlane.Electric, p => p.CoPolar),
            Cut("H plane", antenna, PatternPlane.Magnetic, p => p.CoPolar),
            Cut("45°", antenna, PatternPlane.Diagonal, p => p.CoPolar),
            Cut("45°, crossed field", antenna, PatternPlane.Diagonal, p => p.CrossPolar),
        ];
        return [.. all.Where(trace => trace.Y.Any(y => y > LowestDb))];
    }

    // Cut off at the lower edge: a null would draw a needle through everything below it.
    private static Trace Cut(string label, Antenna antenna, PatternPlane plane, Func<PatternPoint, double> power)
    {
        double axis = FarPattern.Towards(antenna, plane, 0.0).CoPolar;
        IReadOnlyList<PatternPoint> cut = FarPattern.Cut(antenna, plane, -Edge, Edge, Points);
        return new Trace(
            label, [.. cut.Select(p => Degrees(p.Angle))], [.. cut.Select(p => Math.Max(Decibels.FromRatio(power(p) / axis), LowestDb))]);
    }

    private static string Description(Antenna antenna)
    {
        string Width(PatternPlane plane) => BeamShape.Of(antenna, plane).HalfPowerWidth is { } width
            ? string.Create(CultureInfo.InvariantCulture, $"{Degrees(width):F1} degrees")
            : "more than the half space";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Gain {Decibels.FromRatio(antenna.Gain):F1} dBi; half-power width {Width(PatternPlane.Electric)} in the E plane and {Width(PatternPlane.Magnetic)} in the H plane.");
    }

    private static double Degrees(double angle) => angle * 180.0 / Math.PI;
}
