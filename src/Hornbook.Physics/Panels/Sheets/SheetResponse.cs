using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>What a flat sheet in air makes of a plane wave of one polarisation.</summary>
/// <param name="Reflection">R of the tangential electric field [-], both waves referred to the middle plane of the sheet.</param>
/// <param name="Transmission">T of the tangential electric field [-], referred to the middle plane: 1 for a sheet of air.</param>
public readonly record struct SheetResponse(Complex Reflection, Complex Transmission)
{
    /// <summary>Share of the power that is thrown back, |R|² [-].</summary>
    public double Reflected => Squared(Reflection);

    /// <summary>Share of the power that passes, |T|² [-].</summary>
    public double Passed => Squared(Transmission);

    /// <summary>Share of the power that stays in the sheet as heat [-].</summary>
    public double Absorbed => 1.0 - Reflected - Passed;

    private static double Squared(Complex a) => (a.Real * a.Real) + (a.Imaginary * a.Imaginary);
}
