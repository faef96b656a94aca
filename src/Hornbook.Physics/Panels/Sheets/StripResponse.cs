using System.Numerics;
using Hornbook.Physics.Panels.Sheets.Strips;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>A free-standing grid of strips as a panel.</summary>
/// <param name="currents">Its currents for every direction.</param>
internal sealed class StripResponse(StripCurrents currents) : ISheetResponse
{
    /// <inheritdoc/>
    public SheetMatrices Arriving(SheetFace face, double across, double along)
    {
        TangentialMatrix impedance = AirImpedance(across, along);
        TangentialMatrix reflection = impedance * currents.For(across, along, impedance) * -1.0;
        return new SheetMatrices(reflection, TangentialMatrix.Identity + reflection);
    }

    /// <summary>Z of a current sheet in air, of a wave that travels. Eq. strip-grids (1).</summary>
    internal static TangentialMatrix AirImpedance(double u, double v)
    {
        Complex half = 0.5 / SheetNormal.Of((u * u) + (v * v));
        return new TangentialMatrix(half * (1.0 - (u * u)), half * (-u * v), half * (-u * v), half * (1.0 - (v * v)));
    }
}
