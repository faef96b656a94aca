using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>A panel's image in another one: what the panel throws at the other comes back as if from there. Immutable.</summary>
/// <remarks>
/// Eq. panels (5): the images of electric and magnetic currents [Harrington1961], § 3-3, times what the mirror throws back of a wave that comes from the source. The mirror counts as endless, and its
/// reflection as that of one direction.
/// </remarks>
internal sealed class MirrorImage
{
    // Farther apart than so many widths, panels lose a wave sideways before it has gone to and fro often.
    private const double FarthestWidths = 2.0;

    // Nearer than a twentieth of a wavelength the image stands within the panel's own cells, or, where the two cross, in the same places.
    private const double LeastPhase = 0.3;

    private readonly PanelInPlace _panel;
    private readonly Frame _mirror;
    private readonly TangentialMatrix _reflection;
    private readonly Vector[] _points;
    private readonly Way _back;
    private readonly SheetFace _face;

    private MirrorImage(PanelInPlace panel, Frame mirror, TangentialMatrix reflection, double wavenumber)
    {
        (_panel, _mirror, _reflection) = (panel, mirror, reflection);
        _points = Array.ConvertAll(panel.Cells.Points, Mirrored);
        _back = Way.Between(Body.Of(_points, panel.Frame), panel, wavenumber);
        _face = panel.IsInFront(Mirrored(panel.Frame.Origin)) ? SheetFace.Front : SheetFace.Back;
    }

    /// <summary>From the panel's middle to the mirror [m].</summary>
    internal double Gap => Math.Abs(_mirror.Own(_panel.Frame.Origin).X);

    /// <summary>The image of a panel in another.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="mirror">The other.</param>
    /// <param name="others">The others, one of which may stand between.</param>
    /// <param name="mouth">The source.</param>
    /// <returns>Null where the two would not throw the wave to and fro.</returns>
    internal static MirrorImage? Of(PanelInPlace panel, PanelInPlace mirror, IEnumerable<PanelInPlace> others, Mouth mouth)
    {
        if (!panel.IsFlat || !mirror.IsFlat)
        {
            return null;
        }

        Frame frame = mirror.Frame;
        PanelSurface surface = panel.Posed.Panel.Panel.Surface, other = mirror.Posed.Panel.Panel.Surface;
        Vector foot = frame.Own(panel.Frame.Origin), source = frame.Own(mouth.Centre);
        double width = Math.Max(surface.Width, surface.Height), gap = Math.Abs(foot.X);

        // What comes back lands beside the panel where the two stand askew, or the wave comes askew.
        double askew = 2.0 * Math.Acos(Math.Min(1.0, Math.Abs(Vector.Dot(frame.Forward, panel.Frame.Forward)))), slope = Math.Sqrt((source.Y * source.Y) + (source.Z * source.Z)) / Math.Abs(source.X);
        bool comesBack = askew < 0.25 * Math.PI && 2.0 * gap * (Math.Tan(askew) + slope) <= width;
        double side = Math.Sign(foot.X);
        bool IsBefore(Vector own, double from, double to) =>
            side * own.X > from && side * own.X < to && Math.Abs(own.Y) <= 0.5 * other.Width && Math.Abs(own.Z) <= 0.5 * other.Height;
        bool faces = IsBefore(foot, 0.0, FarthestWidths * width)
            && panel.Cells.Points.Min(point => side * frame.Own(point).X) >= LeastPhase / mouth.Wavenumber
            && !others.Any(third => IsBefore(frame.Own(third.Frame.Origin), 0.0, gap));
        if (!comesBack || !faces)
        {
            return null;
        }

        SheetMatrices sheet = mirror.Posed.Panel.Response.Arriving(
            side > 0.0 ? SheetFace.Front : SheetFace.Back, -source.Y / source.Length, -source.Z / source.Length);
        return new MirrorImage(panel, frame, sheet.Reflection, mouth.Wavenumber);
    }

    /// <summary>How the panel answers to a little more than what comes from the mirror; null where nothing does.</summary>
    internal NearbyAnswer? Near(Arrivals arrivals) => _panel.Near(arrivals, _face);

    /// <summary>The panel's answer to what the mirror returns of its own currents.</summary>
    /// <param name="currents">The currents.</param>
    /// <param name="near">How it answers.</param>
    internal CurrentSamples Returned(CurrentSamples currents, NearbyAnswer near)
    {
        Arrivals arrivals = _panel.Nothing();
        _back.Add(Image(currents), arrivals);
        return near.To(arrivals.On(_face));
    }

    /// <summary>What seems to flow in the image.</summary>
    /// <param name="currents">What flows in the panel.</param>
    /// <remarks>The wave of a sheet of currents has E along J, and n × M along E: both are thrown back by the reflection of E. What flows along the normal is little, and takes the mean of both polarisations.</remarks>
    internal CurrentSamples Image(CurrentSamples currents)
    {
        ComplexVector[] electric = new ComplexVector[currents.Count], magnetic = new ComplexVector[currents.Count];
        Complex mean = 0.5 * (_reflection.AcrossAcross + _reflection.AlongAlong);
        for (int i = 0; i < electric.Length; i++)
        {
            ComplexVector j = _mirror.Own(currents.Electric[i]), m = _mirror.Own(currents.Magnetic[i]);
            (Complex jAcross, Complex jAlong) = _reflection.Of(j.Y, j.Z);
            (Complex eAcross, Complex eAlong) = _reflection.Of(-m.Z, m.Y);
            electric[i] = _mirror.Turn(new ComplexVector(-mean * j.X, jAcross, jAlong));
            magnetic[i] = _mirror.Turn(new ComplexVector(mean * m.X, -eAlong, eAcross));
        }

        return CurrentSamples.Keeping(_points, electric, magnetic);
    }

    private Vector Mirrored(Vector place) => place - (_mirror.Forward * (2.0 * Vector.Dot(place - _mirror.Origin, _mirror.Forward)));
}
