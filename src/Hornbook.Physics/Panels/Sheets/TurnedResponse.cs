namespace Hornbook.Physics.Panels.Sheets;

/// <summary>What a sheet at an angle does: the wave is seen in the sheet's own axes, and the answer in the panel's.</summary>
/// <param name="own">What the sheet does in its own axes.</param>
/// <param name="angle">From the panel's axes to the sheet's [rad].</param>
internal sealed class TurnedResponse(ISheetResponse own, double angle) : ISheetResponse
{
    private readonly double _cosine = Math.Cos(angle);
    private readonly double _sine = Math.Sin(angle);

    /// <inheritdoc/>
    public SheetMatrices Arriving(SheetFace face, double across, double along)
    {
        SheetMatrices answer = own.Arriving(face, (across * _cosine) + (along * _sine), (along * _cosine) - (across * _sine));
        return new SheetMatrices(answer.Reflection.Turned(_cosine, -_sine), answer.Transmission.Turned(_cosine, -_sine));
    }
}
