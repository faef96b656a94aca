using Hornbook.Physics.Detection;

namespace Hornbook.Bench.Readings;

/// <summary>What the bench reads as it stands.</summary>
/// <param name="Link">Power delivered into the receiver's guide over power that the source's guide brings to its antenna [-].</param>
/// <param name="Mismatch">What both antennas' own reflections leave, (1−|Γ_s|²)(1−|Γ_r|²), counted in <paramref name="Link"/> [-].</param>
/// <param name="OhmicEfficiency">What both antennas' walls leave, counted in it as well [-].</param>
/// <param name="ReceivedPower">In the receiver's guide [W].</param>
/// <param name="Heard">What the chain makes of it.</param>
/// <param name="RippleDb">Half width of the band from standing waves between the mouths, and between mouths and panels [dB].</param>
/// <param name="Trust">How far the link can be believed, and why.</param>
public sealed record Reading(
    double Link, double Mismatch, double OhmicEfficiency, double ReceivedPower, HeardTone Heard, double RippleDb, Trust Trust)
{
    /// <summary>How the panels were solved; null on a bench without any.</summary>
    public PanelSolution? Panels { get; init; }
}

/// <summary>How the exchange of fields between the panels was solved.</summary>
/// <param name="Sweeps">How often every panel answered to all others.</param>
/// <param name="Residue">What is still missing of the currents, over the currents [-].</param>
/// <param name="IsSettled">Whether that is small enough.</param>
/// <param name="UnsettledDb">How much the link may still move [dB]; 0 where it has settled.</param>
public sealed record PanelSolution(int Sweeps, double Residue, bool IsSettled, double UnsettledDb);

/// <summary>How far a prediction can be believed.</summary>
/// <param name="Level">Good, rough or not to be trusted.</param>
/// <param name="Why">One sentence.</param>
public sealed record Trust(TrustLevel Level, string Why);

/// <summary>How far a prediction can be believed.</summary>
public enum TrustLevel
{
    /// <summary>About half a decibel.</summary>
    Good,

    /// <summary>A few decibels.</summary>
    Rough,

    /// <summary>Outside what the formulation can do: the number is a guide only.</summary>
    Outside,
}
