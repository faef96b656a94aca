namespace Hornbook.Physics.Detection;

/// <summary>A detector diode by the parameters that its data sheet gives for circuit simulation.</summary>
/// <remarks>The junction obeys i = I_s [exp(q v/(n k T)) − 1].</remarks>
public sealed record Diode
{
    /// <summary>A diode.</summary>
    /// <param name="saturationCurrent">I_s [A]; finite, &gt; 0.</param>
    /// <param name="ideality">Ideality factor n [-]; from 1 to 3.</param>
    /// <param name="seriesResistance">R_s [Ω]; finite, ≥ 0.</param>
    /// <param name="junctionCapacitance">At no bias, C_j [F]; finite, ≥ 0.</param>
    /// <param name="breakdownVoltage">Reverse breakdown B_v [V]; &gt; 0, +∞ where it is not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A parameter is out of its range.</exception>
    public Diode(
        double saturationCurrent,
        double ideality,
        double seriesResistance = 0.0,
        double junctionCapacitance = 0.0,
        double breakdownVoltage = double.PositiveInfinity)
    {
        SaturationCurrent = Require.Positive(saturationCurrent);
        Ideality = Require.Within(ideality, 1.0, 3.0);
        SeriesResistance = Require.NotNegative(seriesResistance);
        JunctionCapacitance = Require.NotNegative(junctionCapacitance);
        BreakdownVoltage = Require.Within(breakdownVoltage, double.Epsilon, double.PositiveInfinity);
    }

    /// <summary>Zero-bias p-type Schottky diode HSMS-285x: I_s 3 µA, n 1.06, R_s 25 Ω, C_j0 0.18 pF, B_v 3.8 V [Agilent1999].</summary>
    public static Diode Hsms285x { get; } = new(3e-6, 1.06, 25.0, 0.18e-12, 3.8);

    /// <summary>n-type Schottky diode HSMS-286x, meant for a bias: I_s 50 nA, n 1.08, R_s 5 Ω (6 Ω in one edition), C_j0 0.18 pF, B_v 7 V [Agilent1999].</summary>
    public static Diode Hsms286x { get; } = new(5e-8, 1.08, 5.0, 0.18e-12, 7.0);

    /// <summary>I_s [A].</summary>
    public double SaturationCurrent { get; }

    /// <summary>Ideality factor n [-].</summary>
    public double Ideality { get; }

    /// <summary>R_s [Ω].</summary>
    public double SeriesResistance { get; }

    /// <summary>C_j at no bias [F].</summary>
    public double JunctionCapacitance { get; }

    /// <summary>Reverse breakdown B_v [V]; +∞ where it is not known.</summary>
    public double BreakdownVoltage { get; }

    /// <summary>The voltage over which the junction's current grows e-fold, n k T/q [V], at an absolute temperature [K].</summary>
    public double ScaleVoltage(double temperature) =>
        Ideality * Constants.Boltzmann * Require.Positive(temperature) / Constants.ElementaryCharge;

    /// <summary>Resistance of the junction at no bias, R_j = n k T/(q I_s) [Ω], at an absolute temperature [K].</summary>
    public double JunctionResistance(double temperature) => ScaleVoltage(temperature) / SaturationCurrent;
}
