namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>Why no horn can be had for a wish.</summary>
public enum WishProblem
{
    /// <summary>The gain is no more than that of the guide's open end: no horn is needed. The limit is the open guide's gain [-].</summary>
    GainBelowOpenGuide,

    /// <summary>The horn would be longer than forty wavelengths. The limit is the highest gain of a horn that long [-].</summary>
    GainTooHigh,

    /// <summary>The beam in the E plane is wider than any flare makes it. The limit is the widest beam of a horn [rad].</summary>
    BeamTooWideE,

    /// <summary>The beam in the H plane is wider than any flare makes it. The limit is the widest beam of a horn [rad].</summary>
    BeamTooWideH,

    /// <summary>The beam in the E plane would need a horn longer than forty wavelengths. The limit is the narrowest beam of a horn that long [rad].</summary>
    BeamTooNarrowE,

    /// <summary>The beam in the H plane would need a horn longer than forty wavelengths. The limit is the narrowest beam of a horn that long [rad].</summary>
    BeamTooNarrowH,

    /// <summary>Not even a flare of half a wavelength can be cut. The limit is the length of the strip that four walls around the guide need [m].</summary>
    SheetTooSmall,
}

/// <summary>A wish that cannot be met.</summary>
/// <param name="Problem">Why, and what the two numbers are.</param>
/// <param name="Wanted">What was asked for; unit as the problem says.</param>
/// <param name="Limit">What is possible; unit as the problem says.</param>
public sealed record WishRefusal(WishProblem Problem, double Wanted, double Limit);
