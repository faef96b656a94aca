namespace Hornbook.Physics.Panels.Sheets;

/// <summary>A thin metal sheet: it conducts so well and is so much thicker than the skin that nothing passes.</summary>
/// <remarks>Foil of 10 µm is ten skin depths at 10 GHz; what the surface resistance takes, 1e-4 of the power, is left out.</remarks>
public sealed record Metal : ISheet, ISheetResponse
{
    /// <inheritdoc/>
    public double Thickness => 0.0;

    /// <inheritdoc/>
    public ISheetResponse At(double frequency)
    {
        Require.Positive(frequency);
        return this;
    }

    /// <inheritdoc/>
    public SheetMatrices Arriving(SheetFace face, double across, double along) => new(TangentialMatrix.Identity * -1.0, default);
}
