using Hornbook.Physics.Antennas;

namespace Hornbook.Bench.Demonstrations;

/// <summary>Beam widths by the rules that handbooks print: a constant times wavelength over mouth.</summary>
public static class HandbookBeamWidth
{
    /// <summary>E plane of a horn of optimum flare, 54° λ/B [StutzmanThiele2012].</summary>
    private const double FlaredE = 0.94;

    /// <summary>H plane of a horn of optimum flare, 78° λ/A [StutzmanThiele2012].</summary>
    private const double FlaredH = 1.36;

    /// <summary>Uniform in-phase aperture, 50.8° λ/B: where sin u/u = 1/√2, twice u/π [Balanis2016].</summary>
    private const double StraightE = 0.886;

    /// <summary>Cosine in-phase aperture, 68.1° λ/A, small-angle half-power width [Balanis2016].</summary>
    private const double StraightH = 1.189;

    /// <summary>Half-power width of an antenna in a principal plane [rad].</summary>
    /// <exception cref="ArgumentOutOfRangeException">The plane is none of the two.</exception>
    public static double Of(Antenna antenna, PatternPlane plane)
    {
        ArgumentNullException.ThrowIfNull(antenna);
        AntennaShape shape = antenna.Shape;
        return plane switch
        {
            PatternPlane.Electric => (shape.MouthHeight > shape.Guide.Height ? FlaredE : StraightE) * antenna.Wavelength / shape.MouthHeight,
            PatternPlane.Magnetic => (shape.MouthWidth > shape.Guide.Width ? FlaredH : StraightH) * antenna.Wavelength / shape.MouthWidth,
            _ => throw new ArgumentOutOfRangeException(nameof(plane), plane, $"plane = {plane}; the rules are for the electric and the magnetic plane"),
        };
    }
}
