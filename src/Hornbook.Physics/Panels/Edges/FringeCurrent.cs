using System.Numerics;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using MathNet.Numerics.Integration;

namespace Hornbook.Physics.Panels.Edges;

/// <summary>What the current near the rim of a thin metal sheet has beyond 2 n×H: the fringe current of a half plane.</summary>
/// <remarks>
/// Exact for a plane wave on a half plane; on a sheet of finite size it is the first term, without what one rim sends to another. With u = k_t x it is made of
/// A = e^{ju cos φ0} erfc(e^{jπ/4} √(2u) cos φ0/2) and S = e^{−ju}/√u only: Eq. edges (3) to (6). Sources: [Sommerfeld1896], [Ufimtsev2014].
/// </remarks>
internal readonly struct FringeCurrent
{
    // Farther than so many breadths of a cell from the rim the currents are a plane wave with an amplitude that hardly changes in a cell.
    private const double NearBreadths = 4.0;
    private const int PointsPerPiece = 4;

    private static readonly Complex Ray = Complex.FromPolarCoordinates(1.0, 0.25 * Math.PI);
    private static readonly GaussLegendreRule Rule = new(0.0, 1.0, PointsPerPiece);
    private static readonly double[] Nodes = [.. Rule.Abscissas];
    private static readonly double[] Weights = [.. Rule.Weights];

    private readonly EdgeWave _wave;
    private readonly double _cosHalf;
    private readonly Complex _inward;
    private readonly Complex _along;
    private readonly Complex _alongSingular;

    /// <summary>The fringe current that a wave drives.</summary>
    /// <remarks>Eq. edges (4) to (6).</remarks>
    internal FringeCurrent(EdgeWave wave)
    {
        _wave = wave;
        double cos = wave.CosArrival, sinHalf = Math.Sqrt(0.5 * (1.0 - cos));
        _cosHalf = Math.Sqrt(0.5 * (1.0 + cos));
        Complex electric = wave.ElectricAlong * (wave.Wavenumber / Constants.VacuumImpedance / wave.AcrossWavenumber);
        Complex magnetic = wave.MagneticAlong * (wave.AlongWavenumber / wave.AcrossWavenumber);
        _inward = -2.0 * wave.MagneticAlong;
        _along = -2.0 * ((electric * (2.0 * sinHalf * _cosHalf)) - (magnetic * cos));
        _alongSingular = new Complex(0.0, -2.0 * Math.Sqrt(2.0 / Math.PI)) * Ray * ((electric * sinHalf) - (magnetic * _cosHalf));
    }

    /// <summary>J at a point of the sheet [A/m].</summary>
    /// <param name="distance">From the rim, x [m]; &gt; 0.</param>
    internal ComplexVector At(double distance) => At(distance, 1.0, 0.0);

    /// <summary>The J of a cell that gives the sum over all cells what the integral over the sheet would be, for a field that is straight from cell to cell.</summary>
    /// <param name="link">Where the cell is from the foot of the wave.</param>
    /// <returns>[A/m]; Eq. edges (7).</returns>
    internal ComplexVector OnCell(in EdgeLink link)
    {
        if (_wave.IsNone)
        {
            return default;
        }

        double phase = Phase(link.Ahead);
        if (link.Distance > NearBreadths * link.Breadth)
        {
            double half = 0.5 * _wave.AcrossWavenumber * link.Breadth, sinc = Math.Sin(half) / half;
            return At(link.Distance, link.Spreading * sinc * sinc, phase);
        }

        return Near(link.Distance, link.Breadth) * Complex.FromPolarCoordinates(link.Spreading, phase);
    }

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
            return EdgeWave.AlongSheet(across, _wave, end, face);
        }

        double u = _wave.AcrossWavenumber * crossing.Distance, sinHalf = Math.Sqrt(0.5 * (1.0 - _wave.CosArrival));
        Complex electric = _wave.ElectricAlong * FresnelTail.At(Math.Sqrt(2.0 * u) * sinHalf) * Complex.FromPolarCoordinates(-1.0, Phase(crossing.Ahead) - u);
        return EdgeWave.EdgeOn(electric, crossing.Distance, _wave, end, face);
    }

    private double Phase(double ahead) => -_wave.AlongWavenumber * _wave.Turned * ahead;

    private ComplexVector At(double distance, double scale, double phase)
    {
        double u = _wave.AcrossWavenumber * distance;
        Complex wave = Complex.FromPolarCoordinates(scale / (1.0 + (distance * _wave.Curvature)), phase - u);
        return Current(wave * Envelope(u), wave * (1.0 / Math.Sqrt(u)));
    }

    private ComplexVector Near(double distance, double breadth)
    {
        (Complex smooth, Complex singular) sums = default;
        if (distance < breadth)
        {
            Add(0.0, distance + breadth, distance + breadth, -1.0, breadth, ref sums);
        }
        else
        {
            Add(distance < 2.0 * breadth ? 0.0 : distance - breadth, distance, distance - breadth, 1.0, breadth, ref sums);
            Add(distance, distance + breadth, distance + breadth, -1.0, breadth, ref sums);
        }

        return Current(sums.smooth, sums.singular);
    }

    /// <summary>Adds ∫ A w dx and ∫ S w dx with w = sign (x − zero)/b² from one distance to another; in √u neither is singular.</summary>
    private void Add(double from, double to, double zero, double sign, double breadth, ref (Complex Smooth, Complex Singular) sums)
    {
        double k = _wave.AcrossWavenumber, start = Math.Sqrt(k * from), length = Math.Sqrt(k * to) - start;
        for (int i = 0; i < PointsPerPiece; i++)
        {
            double root = start + (length * Nodes[i]), u = root * root;
            double x = u / k, weight = 2.0 * length * Weights[i] * sign * (x - zero) / (k * breadth * breadth * (1.0 + (x * _wave.Curvature)));
            Complex wave = Complex.FromPolarCoordinates(weight, -u);
            sums.Smooth += wave * root * Envelope(u);
            sums.Singular += wave;
        }
    }

    private Complex Envelope(double u) => FresnelTail.At(Math.Sqrt(2.0 * u) * _cosHalf);

    private ComplexVector Current(Complex smooth, Complex singular) =>
        ComplexVector.Along(_wave.Inward, _inward * smooth) + ComplexVector.Along(_wave.Along, (_along * smooth) + (_alongSingular * singular));
}
