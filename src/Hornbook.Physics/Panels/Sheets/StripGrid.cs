using Hornbook.Physics.Panels.Sheets.Strips;
using Hornbook.Physics.Panels.Sheets.Tables;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>A flat grid of thin metal strips, free-standing in air, each as wide as the next and equally far apart.</summary>
/// <remarks>
/// Own frame in the sheet: "across" runs from strip to strip, "along" follows the strips. The strips are infinitely thin and
/// conduct perfectly; the grid is endless. Equal to another of equal sizes. Immutable and safe to share between threads.
/// </remarks>
public sealed record StripGrid : ISheet
{
    private static readonly Recent<(StripGrid Grid, double Frequency), ISheetResponse> Known = new(32);

    /// <summary>A grid.</summary>
    /// <param name="period">From the middle of one strip to the middle of the next, p [m]; finite, &gt; 0.</param>
    /// <param name="stripWidth">Width of the metal, w [m]; from 1 % to 99 % of the period.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is out of its range.</exception>
    public StripGrid(double period, double stripWidth)
    {
        Period = Require.Positive(period);
        StripWidth = Require.Within(stripWidth, 0.01 * period, 0.99 * period);
    }

    /// <summary>From the middle of one strip to the middle of the next, p [m].</summary>
    public double Period { get; }

    /// <summary>Width of the metal, w [m].</summary>
    public double StripWidth { get; }

    /// <inheritdoc/>
    public double Thickness => 0.0;

    /// <inheritdoc/>
    /// <remarks>Read from a table, within 1e-6 of <see cref="Solved"/> for p &lt; 2λ.</remarks>
    public ISheetResponse At(double frequency) =>
        Known.Of((this, Require.Positive(frequency)), key => key.Grid.Response(key.Frequency, StripCurrents.Tabulated));

    /// <summary>The same solved anew for each direction: slow, and what the table is measured against.</summary>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is out of its range.</exception>
    /// <remarks>
    /// Eq. strip-grids (1) to (7): the currents of the strips in functions that have the right singularity at the edges, Galerkin over the
    /// plane waves of the grid. What six functions for each direction leave of the wave, more where gaps are narrow, is at most 1.3e-6
    /// for p &lt; λ/2.
    /// </remarks>
    internal ISheetResponse Solved(double frequency) => Response(Require.Positive(frequency), StripCurrents.Direct);

    /// <inheritdoc/>
    /// <remarks>Eq. strip-grids (10).</remarks>
    public bool Scatters(double frequency, double across, double along) => SecondBeam.Leaves(Period, frequency, across, along);

    /// <inheritdoc/>
    public double OneWaveUpTo(double frequency) => SecondBeam.NoneUpTo(Period, frequency);

    /// <summary>The equations for the currents of the strips.</summary>
    internal StripEquations Equations(double frequency, ISurroundings surroundings)
    {
        double k = FreeSpace.Wavenumber(frequency), share = StripWidth / Period;
        int count = StripFunctions.CountFor(share, k * StripWidth / surroundings.LayerPhase);
        return new StripEquations(StripFunctions.For(share, count), surroundings, Period / FreeSpace.Wavelength(frequency));
    }

    private StripResponse Response(double frequency, Func<StripEquations, StripCurrents> currents) => new(currents(Equations(frequency, new Air())));
}
