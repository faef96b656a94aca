namespace Hornbook.Physics.Panels.Sheets;

/// <summary>A sheet laid into its panel at an angle: a grid whose strips do not follow the panel's upright.</summary>
public sealed record TurnedSheet : ISheet
{
    /// <summary>A sheet at an angle.</summary>
    /// <param name="sheet">What is turned.</param>
    /// <param name="angle">About the panel's own +x, right-handed: from its own y towards its own z, as a roll [rad]; finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not finite.</exception>
    public TurnedSheet(ISheet sheet, double angle)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        Sheet = sheet;
        Angle = Require.Finite(angle);
    }

    /// <summary>What is turned.</summary>
    public ISheet Sheet { get; }

    /// <summary>About the panel's own +x, right-handed [rad].</summary>
    public double Angle { get; }

    /// <inheritdoc/>
    public double Thickness => Sheet.Thickness;

    /// <inheritdoc/>
    public ISheetResponse At(double frequency) => new TurnedResponse(Sheet.At(frequency), Angle);

    /// <inheritdoc/>
    public bool Scatters(double frequency, double across, double along)
    {
        (double sin, double cos) = Math.SinCos(Angle);
        return Sheet.Scatters(frequency, (across * cos) + (along * sin), (along * cos) - (across * sin));
    }

    /// <inheritdoc/>
    public double OneWaveUpTo(double frequency) => Sheet.OneWaveUpTo(frequency);
}
