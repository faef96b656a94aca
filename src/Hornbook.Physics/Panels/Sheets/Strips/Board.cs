using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets.Strips;

/// <summary>Air on one side of the strips and layers, with air behind them, on the other. Eq. strip-grids (11).</summary>
/// <param name="layers">In the order in which a wave that comes from the strips meets them.</param>
internal sealed class Board(LayerStack layers) : ISurroundings
{
    // A wave straight into the layers heaps up no charge.
    private const double SmallestSquare = 1e-12;

    /// <inheritdoc/>
    public double LargestGuided { get; } = Math.Max(layers.LargestIndex, 1.0);

    /// <inheritdoc/>
    public double LayerPhase { get; } = layers.FirstPhase;

    /// <inheritdoc/>
    public SpectralImpedance Of(double across, double squaredAlong)
    {
        double square = Math.Max((across * across) + squaredAlong, SmallestSquare);
        Complex normal = SheetNormal.Of(square);
        Complex te = (1.0 + layers.FaceToFace(square, normal, Polarisation.Across).Reflection) * 0.5 / normal;
        Complex tm = (1.0 + layers.FaceToFace(square, normal, Polarisation.Within).Reflection) * 0.5 * normal;
        return new SpectralImpedance(te, (tm - te) / square);
    }
}
