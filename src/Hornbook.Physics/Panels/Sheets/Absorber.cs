using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>A flat absorber known by what it is rated for at right angles: so much of the power is returned, so much passes. Immutable.</summary>
/// <remarks>
/// Common practice, no source: what it does to slanting waves is not rated and is that of a body within which waves run straight in, which
/// gets worse with the angle as flat absorbers do and ends in total reflection where the wave grazes. Phases are not rated either; they are chosen so that
/// no rating could make power. Eq. films (4) to (6).
/// </remarks>
public sealed record Absorber : ISheet
{
    /// <summary>An absorber.</summary>
    /// <param name="returned">Share of the power thrown back at right angles, |R|² [-]; 0 to 1. −20 dB is 0.01.</param>
    /// <param name="passed">Share that passes, |T|² [-]; 0 to 1 − returned. With a metal back 0.</param>
    /// <param name="thickness">From face to face [m]; finite, ≥ 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public Absorber(double returned, double passed, double thickness)
    {
        Returned = Require.Within(returned, 0.0, 1.0);
        Passed = Require.Within(passed, 0.0, 1.0 - returned);
        Thickness = Require.NotNegative(thickness);
    }

    /// <summary>|R|² at right angles [-].</summary>
    public double Returned { get; }

    /// <summary>|T|² at right angles [-].</summary>
    public double Passed { get; }

    /// <inheritdoc/>
    public double Thickness { get; }

    /// <inheritdoc/>
    /// <remarks>The rating is taken as that at this frequency.</remarks>
    public ISheetResponse At(double frequency)
    {
        Require.Positive(frequency);
        return new AbsorberResponse(new Complex(0.0, -Math.Sqrt(Returned)), Math.Sqrt(Passed));
    }
}
