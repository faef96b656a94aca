namespace Hornbook.Physics.Panels.Sheets;

/// <summary>Layers in a row as a panel: the same in every direction along it.</summary>
/// <param name="sheet">The sheet.</param>
/// <param name="frequency">f [Hz].</param>
internal sealed class LayeredResponse(LayeredSheet sheet, double frequency) : ISheetResponse
{
    private readonly LayeredSheet _turned = new([.. sheet.Layers.Reverse()]);

    /// <inheritdoc/>
    public SheetMatrices Arriving(SheetFace face, double across, double along)
    {
        LayeredSheet met = face == SheetFace.Back ? sheet : _turned;
        double sine = Math.Sqrt((across * across) + (along * along));
        double angle = Math.Asin(Math.Min(sine, 1.0 - 1e-9));
        SheetResponse normalToPlane = met.At(frequency, angle, Polarisation.Across);
        SheetResponse inPlane = met.At(frequency, angle, Polarisation.Within);
        (double u, double v) = sine > 0.0 ? (across / sine, along / sine) : (1.0, 0.0);
        TangentialMatrix within = new(u * u, u * v, u * v, v * v);
        TangentialMatrix beside = new(v * v, -u * v, -u * v, u * u);
        return new SheetMatrices(
            (within * inPlane.Reflection) + (beside * normalToPlane.Reflection),
            (within * inPlane.Transmission) + (beside * normalToPlane.Transmission));
    }
}
