using System.Numerics;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Edges;

/// <summary>What the current near the rim of a thin metal sheet has beyond 2 n×H: the fringe current of a half plane.</summary>
/// <remarks>
/// Exact for a plane wave on a half plane; on a sheet of finite size it is the first term, without what one rim sends to another. With u = k_t x it is made of
/// A = e^{ju cos φ0} erfc(e^{jπ/4} √(2u) cos φ0/2) and S = e^{−ju}/√u only: Eq. edges (3) to (6). Sources: [Sommerfeld1896], [Ufimtsev2014].
/// </remarks>
internal readonly struct FringeCurrent
{
    private static readonly Complex Ray = Complex.FromPolarCoordinates(1.0, 0.25 * Math.PI);

    private readonly Complex _inward;
    private readonly Complex _along;
    private readonly Complex _alongSingular;

    /// <summary>The fringe current that a wave drives.</summary>
    /// <remarks>Eq. edges (4) to (6).</remarks>
    internal FringeCurrent(EdgeWave wave)
    {
        Wave = wave;
        double cos = wave.CosArrival, sinHalf = Math.Sqrt(0.5 * (1.0 - cos));
        CosHalf = Math.Sqrt(0.5 * (1.0 + cos));
        Complex electric = wave.ElectricAlong * (wave.Wavenumber / Constants.VacuumImpedance / wave.AcrossWavenumber);
        Complex magnetic = wave.MagneticAlong * (wave.AlongWavenumber / wave.AcrossWavenumber);
        _inward = -2.0 * wave.MagneticAlong;
        _along = -2.0 * ((electric * (2.0 * sinHalf * CosHalf)) - (magnetic * cos));
        _alongSingular = new Complex(0.0, -2.0 * Math.Sqrt(2.0 / Math.PI)) * Ray * ((electric * sinHalf) - (magnetic * CosHalf));
    }

    /// <summary>The wave that drives it.</summary>
    internal EdgeWave Wave { get; }

    /// <summary>cos φ0/2.</summary>
    internal double CosHalf { get; }

    /// <summary>By how much its phase grows along inward × front normal [rad/m].</summary>
    internal double PhaseSlope => -Wave.AlongWavenumber * Wave.Turned;

    /// <summary>J at a point of the sheet [A/m].</summary>
    /// <param name="distance">From the rim, x [m]; &gt; 0.</param>
    internal ComplexVector At(double distance) => At(distance, 1.0, 0.0);

    /// <summary>What reaches the rim opposite along the sheet.</summary>
    /// <param name="crossing">The way.</param>
    /// <param name="end">The foot where it ends, in the frame of the field.</param>
    /// <param name="face">The face on which the wave of this current arrived.</param>
    /// <remarks>Eq. edges (8) and (9).</remarks>
    internal EdgeWave Sent(in RimCrossing crossing, RimFoot end, SheetFace face)
    {
        if (!crossing.ThroughAir)
        {
            Complex across = At(crossing.Distance, crossing.Spreading, Phase(crossing.Ahead)).Component(end.Inward);
            return EdgeWave.AlongSheet(across, Wave, end, face);
        }

        double u = Wave.AcrossWavenumber * crossing.Distance, sinHalf = Math.Sqrt(0.5 * (1.0 - Wave.CosArrival));
        Complex electric = Wave.ElectricAlong * FresnelTail.At(Math.Sqrt(2.0 * u) * sinHalf) * Complex.FromPolarCoordinates(-1.0, Phase(crossing.Ahead) - u);
        return EdgeWave.EdgeOn(electric, crossing.Distance, Wave, end, face);
    }

    private double Phase(double ahead) => PhaseSlope * ahead;

    private ComplexVector At(double distance, double scale, double phase)
    {
        double u = Wave.AcrossWavenumber * distance;
        Complex wave = Complex.FromPolarCoordinates(scale / (1.0 + (distance * Wave.Curvature)), phase - u);
        return Of(wave * Envelope(u), wave * (1.0 / Math.Sqrt(u)));
    }

    private Complex Envelope(double u) => FresnelTail.At(Math.Sqrt(2.0 * u) * CosHalf);

    /// <summary>J of A and S, or of their means [A/m].</summary>
    internal ComplexVector Of(Complex smooth, Complex singular) =>
        ComplexVector.Along(Wave.Inward, _inward * smooth) + ComplexVector.Along(Wave.Along, (_along * smooth) + (_alongSingular * singular));
}
