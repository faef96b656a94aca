using System.Numerics;

namespace Hornbook.Physics.Antennas;

/// <summary>One direction of a cut.</summary>
/// <param name="Angle">Off the axis [rad].</param>
/// <param name="CoPolarAmplitude">Its squared magnitude is the co-polar directivity [-].</param>
/// <param name="CrossPolarAmplitude">Its squared magnitude is the cross-polar directivity [-].</param>
public readonly record struct PatternPoint(double Angle, Complex CoPolarAmplitude, Complex CrossPolarAmplitude)
{
    /// <summary>Co-polar directivity [-].</summary>
    public double CoPolar => Squared(CoPolarAmplitude);

    /// <summary>Cross-polar directivity [-].</summary>
    public double CrossPolar => Squared(CrossPolarAmplitude);

    private static double Squared(Complex a) => (a.Real * a.Real) + (a.Imaginary * a.Imaginary);
}
