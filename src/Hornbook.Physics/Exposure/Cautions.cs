namespace Hornbook.Physics.Exposure;

/// <summary>What is said to everybody who stands near a bench: one place, so that page, commands and handout say the same.</summary>
public static class Cautions
{
    /// <summary>Eyes.</summary>
    public const string Eyes = "Never look into a horn or an open guide whose source is on, and let nobody else do so. The eye has little blood to carry heat away.";

    /// <summary>Guides.</summary>
    public const string LiveGuides = "Switch the source off before you change an antenna or open a flange. All the power leaves a guide through a small area.";

    /// <summary>Distance.</summary>
    public const string Distance = "Point the horn where nobody sits, and keep people outside the keep-out distance for as long as the source is on. Hands pass through; they do not stay.";

    /// <summary>Gear.</summary>
    /// <remarks>Common practice, no source.</remarks>
    public const string DamagedGear = "Do not use a cracked guide, a loose flange, a dented horn or a worn supply lead: the wave, or the mains, comes out where nobody expects it.";

    /// <summary>Implants.</summary>
    /// <remarks>Common practice, no source.</remarks>
    public const string Implants = "Whoever has a pacemaker or another active implant asks their doctor first, and stays farther away than the limits ask.";

    /// <summary>Law.</summary>
    public const string LocalRules = "Exposure limits and licences differ by country and change. The numbers here are to plan with; the local code and a licensed practitioner decide.";

    /// <summary>Model.</summary>
    public const string Prediction = "The densities are computed from dimensions and power as typed in. Nothing here has measured your bench.";

    /// <summary>All of them, the most urgent first.</summary>
    public static IReadOnlyList<string> All { get; } = [Eyes, LiveGuides, Distance, DamagedGear, Implants, LocalRules, Prediction];
}
