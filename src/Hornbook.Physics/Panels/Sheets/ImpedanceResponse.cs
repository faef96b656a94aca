using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>A film as a panel: a shunt on the wave, whose own impedance depends on angle and polarisation. Eq. films (2).</summary>
/// <param name="impedance">Z_s over that of vacuum [-].</param>
internal sealed class ImpedanceResponse(Complex impedance) : ISheetResponse
{
    private readonly Complex _double = 2.0 * impedance;

    /// <inheritdoc/>
    public SheetMatrices Arriving(SheetFace face, double across, double along)
    {
        double cosine = IncidencePlane.Cosine(across, along);
        TangentialMatrix reflection = IncidencePlane.Matrix(
            -1.0 / (1.0 + (_double * cosine)), -cosine / (cosine + _double), across, along);
        return new SheetMatrices(reflection, TangentialMatrix.Identity + reflection);
    }
}
