using System.Numerics;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Edges;

/// <summary>A wave that arrives at a point of the rim of a thin metal sheet, taken as a plane one, in the frame of the rim.</summary>
/// <remarks>
/// x leads from the rim into the sheet, y out of the lit face, z = x × y along the rim. The wave is e^{jk_t(x cos φ0 + y sin φ0) − jk_z z}:
/// φ0 is the angle between the sheet and where the wave comes from, 0 ≤ φ0 ≤ π. Eq. edges (1).
/// </remarks>
internal readonly record struct EdgeWave
{
    // Nearer to the rim's own direction (6°) the currents of a plane wave no longer describe what a real beam does; they stay bounded.
    private const double LeastSine = 0.1;

    private EdgeWave(RimFoot foot, SheetFace face, double wavenumber)
    {
        Turned = face == SheetFace.Front ? 1.0 : -1.0;
        Inward = foot.Inward;
        Along = Vector.Cross(foot.Inward, foot.Normal) * Turned;
        (Wavenumber, AcrossWavenumber) = (wavenumber, wavenumber);
    }

    /// <summary>x: unit vector from the rim into the sheet.</summary>
    internal Vector Inward { get; }

    /// <summary>z: unit vector along the rim.</summary>
    internal Vector Along { get; }

    /// <summary>1 where the front face is lit, −1 where the back face is: then z runs against inward × front normal.</summary>
    internal double Turned { get; }

    /// <summary>E_z at the rim [V/m].</summary>
    internal Complex ElectricAlong { get; private init; }

    /// <summary>H_z at the rim [A/m].</summary>
    internal Complex MagneticAlong { get; private init; }

    /// <summary>1/W of a wave from a line at the distance W before the rim, whose current falls off as W/(W + x); 0 for a plane wave [1/m].</summary>
    internal double Curvature { get; private init; }

    /// <summary>Whether no field arrives.</summary>
    internal bool IsNone => ElectricAlong == Complex.Zero && MagneticAlong == Complex.Zero;

    /// <summary>k [1/m].</summary>
    internal double Wavenumber { get; }

    /// <summary>k_t = k sin β, across the rim [1/m].</summary>
    internal double AcrossWavenumber { get; private init; }

    /// <summary>k_z = k cos β, along the rim [1/m].</summary>
    internal double AlongWavenumber { get; private init; }

    /// <summary>cos φ0.</summary>
    internal double CosArrival { get; private init; }

    /// <summary>The wave of a field at the rim; one without field where no power arrives.</summary>
    /// <param name="incident">Field at the rim without that of the sheet itself.</param>
    /// <param name="foot">The point of the rim, in the frame of the field.</param>
    /// <param name="face">The face on which it arrives.</param>
    /// <param name="wavenumber">k [1/m]; &gt; 0.</param>
    internal static EdgeWave Of(FieldSample incident, RimFoot foot, SheetFace face, double wavenumber)
    {
        EdgeWave wave = new(foot, face, wavenumber);
        Vector flow = incident.PowerDensity;
        double density = flow.Length;
        if (!(density > 0.0))
        {
            return wave;
        }

        double inward = Vector.Dot(flow, foot.Inward), across = double.Hypot(inward, Vector.Dot(flow, foot.Normal));
        return wave with
        {
            ElectricAlong = incident.Electric.Component(wave.Along),
            MagneticAlong = incident.Magnetic.Component(wave.Along),
            AcrossWavenumber = wavenumber * Math.Max(across / density, LeastSine),
            AlongWavenumber = wavenumber * Vector.Dot(flow, wave.Along) / density,
            CosArrival = across > 0.0 ? Math.Clamp(-inward / across, -1.0, 1.0) : 0.0,
        };
    }

    /// <summary>The wave along the sheet, towards its rim, whose current across the rim is given.</summary>
    /// <param name="current">J along the foot's inward direction, where it arrives at the rim [A/m].</param>
    /// <param name="sent">The wave from which it stems: its wave numbers along and across the rims are kept.</param>
    /// <param name="foot">The point of the rim.</param>
    /// <param name="face">The face on which that wave arrived.</param>
    internal static EdgeWave AlongSheet(Complex current, EdgeWave sent, RimFoot foot, SheetFace face)
    {
        EdgeWave wave = new(foot, face, sent.Wavenumber);
        return wave with
        {
            MagneticAlong = 0.5 * current,
            AcrossWavenumber = sent.AcrossWavenumber,
            AlongWavenumber = sent.AlongWavenumber * Vector.Dot(sent.Along, wave.Along),
            CosArrival = 1.0,
        };
    }

    /// <summary>The wave through the air in the plane of the sheet, from outside to its rim, whose electric field along the rim is given.</summary>
    /// <param name="electric">E along the z of the wave that sent it, where it arrives at the rim [V/m].</param>
    /// <param name="distance">From where it comes, W [m]; &gt; 0.</param>
    /// <param name="sent">The wave from which it stems.</param>
    /// <param name="foot">The point of the rim.</param>
    /// <param name="face">The face on which that wave arrived.</param>
    internal static EdgeWave EdgeOn(Complex electric, double distance, EdgeWave sent, RimFoot foot, SheetFace face)
    {
        EdgeWave wave = new(foot, face, sent.Wavenumber);
        double turned = Vector.Dot(sent.Along, wave.Along);
        return wave with
        {
            ElectricAlong = electric * turned,
            AcrossWavenumber = sent.AcrossWavenumber,
            AlongWavenumber = sent.AlongWavenumber * turned,
            CosArrival = -1.0,
            Curvature = 1.0 / distance,
        };
    }

    /// <summary>This wave and another one of the same direction.</summary>
    internal EdgeWave Plus(EdgeWave other) =>
        this with { ElectricAlong = ElectricAlong + other.ElectricAlong, MagneticAlong = MagneticAlong + other.MagneticAlong };
}
