using Hornbook.Physics.Panels.Sheets.Tables;
using Hornbook.Physics.Panels.Sheets.Wires;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>A flat grid of parallel round wires in air, all of one thickness and equally far apart.</summary>
/// <remarks>The wires are endless and conduct perfectly. Equal to another of equal sizes. Immutable and safe to share between threads.</remarks>
public sealed record WireGrid : ISheet
{
    private static readonly Recent<(WireGrid Grid, double Frequency), ISheetResponse> Known = new(32);

    /// <summary>A grid.</summary>
    /// <param name="period">From the middle of one wire to the middle of the next, p [m]; finite, &gt; 0.</param>
    /// <param name="diameter">Of the wire, d [m]; from 0.1 % to 40 % of the period.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is out of its range.</exception>
    public WireGrid(double period, double diameter)
    {
        Period = Require.Positive(period);
        Diameter = Require.Within(diameter, 0.001 * period, 0.4 * period);
    }

    /// <summary>From the middle of one wire to the middle of the next, p [m].</summary>
    public double Period { get; }

    /// <summary>Of the wire, d [m].</summary>
    public double Diameter { get; }

    /// <inheritdoc/>
    public double Thickness => Diameter;

    /// <inheritdoc/>
    /// <remarks>
    /// Eq. wire-grids (1) to (13); tabulated for p ≤ 0.65 λ, and to 1.2 λ for wires of up to a fifth of the period. Others are solved anew for each direction, which is slow
    /// and allocates.
    /// </remarks>
    public ISheetResponse At(double frequency) => Known.Of((this, Require.Positive(frequency)), key => WireResponse.Of(key.Grid.Equations(key.Frequency)));

    /// <summary>The same solved anew for each direction: slow, and what the table is measured against.</summary>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is out of its range.</exception>
    internal ISheetResponse Solved(double frequency) => WireResponse.Direct(Equations(Require.Positive(frequency)));

    /// <inheritdoc/>
    public bool Scatters(double frequency, double across, double along) => SecondBeam.Leaves(Period, frequency, across, along);

    /// <inheritdoc/>
    public double OneWaveUpTo(double frequency) => SecondBeam.NoneUpTo(Period, frequency);

    private WireEquations Equations(double frequency) => new(Period / FreeSpace.Wavelength(frequency), Diameter / Period);
}
