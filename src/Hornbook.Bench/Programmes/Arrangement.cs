using Hornbook.Bench.Layout;
using Hornbook.Physics.Detection;

namespace Hornbook.Bench.Programmes;

/// <summary>How the ends stand and the amplifier is set for one demonstration.</summary>
/// <param name="Reach">Mouth to mouth as the bench stands before the demonstration moves anything [m].</param>
/// <param name="Gain">Of the amplifier [-].</param>
public readonly record struct Arrangement(double Reach, double Gain)
{
    // Steps of a gain switch (common practice, no source).
    private static readonly double[] Steps = [1.0, 2.0, 5.0];

    /// <summary>The gains that are tried: steps of 1, 2 and 5, and the bench's own.</summary>
    internal static double[] Gains(DetectionChain chain) =>
    [
        .. Enumerable.Range(0, 5).SelectMany(decade => Steps.Select(step => step * Math.Pow(10.0, decade))).Append(chain.Amplifier.Gain).Distinct().Order(),
    ];

    /// <summary>How a bench stands.</summary>
    internal static Arrangement Of(BenchPlan plan) =>
        new((plan.Receiver.Pose.Position - plan.Source.Pose.Position).Length, plan.Detection.Amplifier.Gain);

    /// <summary>The distances that are tried: the bench's own and shares of it, as far as the table reaches.</summary>
    internal static double[] Reaches(BenchPlan plan)
    {
        double own = Of(plan).Reach;
        return [.. Shares.Select(share => share * own).Where(reach => reach < plan.Table.Length)];
    }

    private static readonly double[] Shares = [1.0, 0.6, 0.8, 1.3];
}
