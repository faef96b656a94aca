namespace Hornbook.Bench.Findings;

/// <summary>A band in which radiating is ruled in a way that a demonstrator may want to know.</summary>
/// <param name="Name">Which rule, in words that fit after "It lies in".</param>
/// <param name="Lowest">Lower end [Hz].</param>
/// <param name="Highest">Upper end [Hz].</param>
/// <param name="RadiatedPower">Equivalent isotropically radiated power that the rule allows [W]; null where it depends on a licence.</param>
internal sealed record EmissionBand(string Name, double Lowest, double Highest, double? RadiatedPower)
{
    /// <summary>Field strength E at distance r of an e.i.r.p. P in free space: E² r² = 30 Ω × P (η/4π = 29.98 Ω).</summary>
    private const double Ohms = 30.0;

    /// <summary>Bands of table-top sources; anything else is outside of them all.</summary>
    /// <remarks>
    /// 47 CFR 15.245 [Cfr47Part15]; ERC Recommendation 70-03 annex 6 [Erc7003]; amateur allocation 10.0 to 10.5 GHz and the ISM band
    /// around 24.125 GHz [ItuRadioRegulations]. All from memory of those texts: the local rule in force decides.
    /// </remarks>
    internal static IReadOnlyList<EmissionBand> All { get; } =
    [
        new("the band of field-disturbance sensors of 47 CFR 15.245 (USA)", 10.500e9, 10.550e9, FieldLimit(2.5, 3.0)),
        new("the band of field-disturbance sensors of 47 CFR 15.245 (USA)", 24.075e9, 24.175e9, FieldLimit(2.5, 3.0)),
        new("the radiodetermination band of ERC/REC 70-03 annex 6 (Europe)", 10.5e9, 10.6e9, 0.5),
        new("the radiodetermination band of ERC/REC 70-03 annex 6 (Europe)", 24.05e9, 24.25e9, 0.1),
        new("the amateurs' 3 cm band, for licensed amateurs", 10.0e9, 10.5e9, null),
    ];

    internal bool Contains(double frequency) => frequency >= Lowest && frequency <= Highest;

    private static double FieldLimit(double fieldStrength, double distance) => fieldStrength * fieldStrength * distance * distance / Ohms;
}
