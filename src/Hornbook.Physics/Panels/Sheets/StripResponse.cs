namespace Hornbook.Physics.Panels.Sheets;

/// <summary>A free-standing grid of strips as a panel.</summary>
internal sealed class StripResponse(StripGrid grid, double frequency) : ISheetResponse
{
    /// <inheritdoc/>
    public SheetMatrices Arriving(SheetFace face, double across, double along)
    {
        double angle = Math.Asin(Math.Min(Math.Sqrt((across * across) + (along * along)), 1.0 - 1e-9));
        TangentialMatrix reflection = grid.Reflection(frequency, angle, Math.Atan2(along, across));
        return new SheetMatrices(reflection, TangentialMatrix.Identity + reflection);
    }
}
