namespace Hornbook.Bench.Demonstrations;

/// <summary>The law P = P₀ cos²(φ − φ₀) that runs closest to powers over a roll.</summary>
/// <param name="StrongestAt">φ₀ [rad], from −π/2 to π/2.</param>
/// <param name="Strongest">P₀ plus what never vanishes, in the unit of the powers.</param>
/// <remarks>Fitted as P = a + b cos 2φ + c sin 2φ, which is linear in its constants.</remarks>
public sealed record MalusLaw(double StrongestAt, double Strongest)
{
    /// <summary>What is left across φ₀, in the unit of the powers; 0 for the pure law.</summary>
    public double Weakest { get; init; }

    /// <summary>Fits the law.</summary>
    /// <param name="rolls">φ [rad], length n ≥ 3.</param>
    /// <param name="powers">In any unit, length n, ≥ 0.</param>
    public static MalusLaw Fit(double[] rolls, double[] powers)
    {
        double[] abc = MathNet.Numerics.Fit.LinearCombination(
            rolls, powers, _ => 1.0, phi => Math.Cos(2.0 * phi), phi => Math.Sin(2.0 * phi));
        double swing = Math.Sqrt((abc[1] * abc[1]) + (abc[2] * abc[2]));
        return new MalusLaw(0.5 * Math.Atan2(abc[2], abc[1]), abc[0] + swing) { Weakest = Math.Max(0.0, abc[0] - swing) };
    }

    /// <summary>Share of the strongest that cos² promises at a roll [-].</summary>
    public double Share(double roll) => Math.Pow(Math.Cos(roll - StrongestAt), 2.0);

    /// <summary>Greatest departure of powers from the law where it asks for more than 1/100 of the strongest [dB].</summary>
    /// <param name="rolls">φ [rad], length n.</param>
    /// <param name="powers">In the unit of the fit, length n.</param>
    public double LargestErrorDb(double[] rolls, double[] powers) => LawDeparture.LargestDb(powers, [.. rolls.Select(roll => Strongest * Share(roll))], Strongest);
}
