using Hornbook.Physics;

namespace Hornbook.Bench.Findings;

/// <summary>Poses that look at each other, alike in polarisation.</summary>
internal static class Aim
{
    /// <summary>A pose turned and tilted so that it looks at a place.</summary>
    internal static Pose At(Pose pose, Vector place)
    {
        Vector d = place - pose.Position;
        return pose with { Turn = Math.Atan2(d.Y, d.X), Tilt = Math.Atan2(d.Z, Math.Sqrt((d.X * d.X) + (d.Y * d.Y))) };
    }

    /// <summary>The receiver's roll, nearest to none, at which its electric field lies along the source's as seen from it [rad].</summary>
    internal static double AlignedRoll(Pose source, Pose receiver)
    {
        Pose level = receiver with { Roll = 0.0 };
        double roll = Math.Atan2(-Vector.Dot(source.Up, level.Left), Vector.Dot(source.Up, level.Up));
        return Math.IEEERemainder(roll, Math.PI);
    }

    /// <summary>Both poses as they would have to be for the most to be received from where they stand.</summary>
    internal static (Pose Source, Pose Receiver) Best(Pose source, Pose receiver)
    {
        Pose sending = At(source, receiver.Position);
        Pose receiving = At(receiver, source.Position);
        return (sending, receiving with { Roll = AlignedRoll(sending, receiving) });
    }
}
