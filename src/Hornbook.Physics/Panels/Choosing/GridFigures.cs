using System.Numerics;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Physics.Panels.Choosing;

/// <summary>A grid and what it does at a frequency to a wave at right angles: the figures by which grids are chosen.</summary>
/// <param name="Make">How it is made.</param>
/// <param name="Period">From the middle of one strip or wire to the middle of the next, p [m].</param>
/// <param name="Metal">Width of a strip or diameter of a wire [m].</param>
/// <param name="Frequency">f [Hz].</param>
/// <param name="PassedAlong">Share of the power that passes with the electric field along the metal, |T∥|² [-].</param>
/// <param name="PassedAcross">Share of the power that passes with the field across it, |T⊥|² [-].</param>
public sealed record GridFigures(GridMake Make, double Period, double Metal, double Frequency, double PassedAlong, double PassedAcross)
{
    /// <summary>Between one strip or wire and the next [m].</summary>
    public double Gap => Period - Metal;

    /// <summary>Up to this angle to the normal no second beam leaves, in whatever plane the wave arrives [rad].</summary>
    public double OneWaveUpTo => Make.Made(Period, Metal).OneWaveUpTo(Frequency);

    /// <summary>The figures of a grid.</summary>
    /// <param name="make">How it is made.</param>
    /// <param name="period">p [m]; finite, &gt; 0.</param>
    /// <param name="metal">Width of a strip or diameter of a wire [m]; within the shares of the make.</param>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public static GridFigures Of(GridMake make, double period, double metal, double frequency)
    {
        ArgumentNullException.ThrowIfNull(make);
        TangentialMatrix passed = make.Solved(period, metal, Require.Positive(frequency)).Arriving(SheetFace.Front, 0.0, 0.0).Transmission;
        return new GridFigures(make, period, metal, frequency, Power(passed.AlongAlong), Power(passed.AcrossAcross));
    }

    private static double Power(Complex amplitude) => (amplitude.Real * amplitude.Real) + (amplitude.Imaginary * amplitude.Imaginary);
}
