using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets.Strips;

/// <summary>Air on both sides. Eq. strip-grids (1).</summary>
internal sealed class Air : ISurroundings
{
    /// <inheritdoc/>
    public double LargestGuided => 1.0;

    /// <inheritdoc/>
    public double LayerPhase => double.PositiveInfinity;

    /// <inheritdoc/>
    public SpectralImpedance Of(double across, double squaredAlong)
    {
        Complex half = 0.5 / SheetNormal.Of((across * across) + squaredAlong);
        return new SpectralImpedance(half, -half);
    }
}
