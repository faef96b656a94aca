using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>A film so thin that only its impedance counts: the tangential electric field in it over the current that flows in it, per square. Immutable.</summary>
/// <remarks>
/// Resistive: a coated film or graphite paper. Reactive: a fine mesh of metal (+j) or of patches (−j), alike in both directions, as a half mirror. Good
/// for films much thinner than the wave inside them and meshes much finer than the wave, for which the impedance is nearly the same at every angle.
/// Eq. films (1) and (2); [SeniorVolakis1995].
/// </remarks>
public sealed record ImpedanceSheet : ISheet
{
    /// <summary>A film.</summary>
    /// <param name="ohmsPerSquare">Z_s [Ω]; finite, not 0, real part ≥ 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The impedance is out of its range.</exception>
    public ImpedanceSheet(Complex ohmsPerSquare)
    {
        Require.NotNegative(ohmsPerSquare.Real, nameof(ohmsPerSquare));
        Require.Positive(ohmsPerSquare.Magnitude, nameof(ohmsPerSquare));
        OhmsPerSquare = ohmsPerSquare;
    }

    /// <summary>Z_s [Ω].</summary>
    public Complex OhmsPerSquare { get; }

    /// <inheritdoc/>
    public double Thickness => 0.0;

    /// <summary>A mesh without loss that throws back a given share of the power at right angles.</summary>
    /// <param name="reflected">|R|² [-]; 1e-6 to 1 − 1e-6. One half makes a half mirror, of X = η/2.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is out of its range.</exception>
    /// <remarks>Eq. films (3).</remarks>
    public static ImpedanceSheet Mirror(double reflected)
    {
        double share = Require.Within(reflected, 1e-6, 1.0 - 1e-6);
        return new ImpedanceSheet(new Complex(0.0, 0.5 * Constants.VacuumImpedance * Math.Sqrt((1.0 / share) - 1.0)));
    }

    /// <inheritdoc/>
    /// <remarks>The impedance is taken as that at this frequency.</remarks>
    public ISheetResponse At(double frequency)
    {
        Require.Positive(frequency);
        return new ImpedanceResponse(OhmsPerSquare / Constants.VacuumImpedance);
    }
}
