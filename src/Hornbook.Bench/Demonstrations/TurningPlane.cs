using Hornbook.Physics;
using Hornbook.Physics.Antennas;

namespace Hornbook.Bench.Demonstrations;

/// <summary>Which cut of its pattern an antenna sweeps past a fixed place when it is turned about the vertical.</summary>
internal static class TurningPlane
{
    /// <summary>How far from a principal plane it still counts as one, 1°.</summary>
    private const double Aligned = Math.PI / 180.0;

    /// <summary>The principal plane that is swept; null for an antenna held askew.</summary>
    internal static PatternPlane? Of(Pose pose)
    {
        double roll = Math.Abs(Math.IEEERemainder(pose.Roll, Math.PI));
        if (Math.Abs(pose.Tilt) > Aligned)
        {
            return null;
        }

        return roll < Aligned ? PatternPlane.Magnetic : roll > (Math.PI / 2.0) - Aligned ? PatternPlane.Electric : null;
    }
}
