using Hornbook.Bench.Layout;
using Hornbook.Physics;
using MathNet.Numerics.Integration;
using Complex = System.Numerics.Complex;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>Fresnel's law of a straight edge between two points.</summary>
internal static class KnifeEdge
{
    /// <summary>Where the first maximum of the lit side lies, v [-], and how strong it is over the open way [-].</summary>
    /// <remarks>derived: there the Cornu spiral is farthest from its other end [BornWolf1999] § 8.7.</remarks>
    internal const double FirstMaximumAt = -1.2172, FirstMaximum = 1.3704;

    // Enough for v up to 8: the phase runs through a hundred radians there.
    private const int Order = 256;

    /// <summary>Power behind the edge over that of the open way, ½ |∫_v^∞ e^{−jπt²/2} dt|² [-].</summary>
    /// <param name="v">v [-]; negative on the lit side; between −8 and 8.</param>
    internal static double Power(double v)
    {
        Complex upTo = GaussLegendreRule.ContourIntegrate(t => Complex.FromPolarCoordinates(1.0, -0.5 * Math.PI * t * t), 0.0, v, Order);
        return 0.5 * Math.Pow((new Complex(0.5, -0.5) - upTo).Magnitude, 2.0);
    }

    /// <summary>v = ±2 √(Δ/λ), Δ what the way by the edge is longer than the straight one [-]; positive where the plate shuts the straight way.</summary>
    /// <param name="plate">The plate, one of whose upright edges is near the way.</param>
    /// <param name="setting">Where the ends stand.</param>
    /// <param name="wavelength">λ [m].</param>
    internal static double Parameter(BenchPanel plate, Setting setting, double wavelength)
    {
        Vector source = setting.Source.Pose.Position, receiver = setting.Receiver.Pose.Position;
        Vector from = plate.Pose.ToOwn(source), to = plate.Pose.ToOwn(receiver);
        Vector through = from + ((to - from) * (from.X / (from.X - to.X)));
        double half = 0.5 * plate.Panel.Surface.Width;
        Vector edge = plate.Pose.ToBench(new Vector(0.0, through.Y < 0.0 ? -half : half, through.Z));
        double longer = (edge - source).Length + (receiver - edge).Length - (receiver - source).Length;
        return 2.0 * Math.Sqrt(longer / wavelength) * (Math.Abs(through.Y) < half ? 1.0 : -1.0);
    }
}
