namespace Hornbook.Physics.Panels.Exchange.Legs;

/// <summary>What a way is for.</summary>
/// <param name="FewPairs">Up to so many pairs of sample and observer are sooner summed than sorted.</param>
/// <param name="Tolerance">Error that a transfer may leave, of the largest field there [-].</param>
/// <param name="OnlyJumps">Whether only the panel's jumps are asked for of the fields.</param>
internal readonly record struct WayUse(long FewPairs, double Tolerance, bool OnlyJumps)
{
    /// <summary>Gone in every sweep, and these stop at four times that error.</summary>
    internal static readonly WayUse Sweeps = new(100_000, 5e-4, OnlyJumps: true);

    /// <summary>Gone once, for the light of the source, with which its echo is told too.</summary>
    internal static readonly WayUse Light = new(100_000, 1e-4, OnlyJumps: false);
}
