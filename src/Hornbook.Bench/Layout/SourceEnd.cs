using Hornbook.Physics;

namespace Hornbook.Bench.Layout;

/// <summary>The sending end.</summary>
/// <param name="Antenna">Name of its antenna.</param>
/// <param name="Pose">Where the mouth's centre stands and how it is held.</param>
/// <param name="Power">Power that the guide brings to the antenna [W].</param>
/// <param name="WorstCasePower">The most that the source can give, for exposure [W]; ≥ power.</param>
public sealed record SourceEnd(string Antenna, Pose Pose, double Power, double WorstCasePower)
{
    /// <summary>Whether the worst case was stated; where it was not, it is the power and may be too low.</summary>
    public bool IsWorstCaseStated { get; init; } = true;
}
