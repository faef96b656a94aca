using System.Numerics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Panels.Exchange.Legs;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Mirrorings;
using Hornbook.Physics.Radiation.Transfers;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>An antenna where it stands, as a body whose field comes to panels. Immutable.</summary>
internal sealed class Mouth
{
    // The field of an antenna at so many cells is sooner interpolated, unless they are all near.
    private const int WorthSorting = 2000;
    private const double LeastGain = 1.5;

    // Of its largest field at a panel.
    private const double Tolerance = 1e-4;

    private readonly Antenna _antenna;
    private readonly Pose _pose;

    internal Mouth(Antenna antenna, Pose pose)
    {
        (_antenna, _pose) = (antenna, pose);
        Currents = antenna.Currents.Posed(pose);
        Centre = pose.Position;
        Wavenumber = antenna.Wavenumber;
        Axes = Frame.Of(pose);
        Body = Body.Of(Currents.Points.ToArray(), Axes);
    }

    /// <summary>Its currents in the bench frame, for one watt radiated.</summary>
    internal CurrentSamples Currents { get; }

    /// <summary>Where they flow.</summary>
    internal Body Body { get; }

    /// <summary>The centre of the mouth [m].</summary>
    internal Vector Centre { get; }

    /// <summary>Its own frame.</summary>
    internal Frame Axes { get; }

    /// <summary>k [1/m].</summary>
    internal double Wavenumber { get; }

    /// <summary>The sign of its currents under a mirroring in its own frame; 0 where that is not all that becomes of them.</summary>
    internal int Sign(Mirroring mirroring) => _antenna.Sign(mirroring);

    /// <summary>What arrives at a panel straight from here.</summary>
    internal Arrivals Light(PanelInPlace panel)
    {
        Arrivals arrivals = panel.Nothing();
        Way.Between(Body, panel, Wavenumber, WayUse.Light).Add(Currents, arrivals);
        return arrivals;
    }

    /// <summary>The reaction of its field with currents that flow at the places of a body [W], to a few parts in a hundred thousand.</summary>
    internal Complex Reaction(Body body, CurrentSamples currents)
    {
        if (body.Points.Length < WorthSorting || FieldTransfer.Between(Body.Tree, body.Tree, Wavenumber, Tolerance) is not { Gain: > LeastGain } transfer)
        {
            return Radiation.Reaction.Between(_antenna.Currents, _pose, currents, default, Wavenumber);
        }

        using Rented<FieldSample> fields = new(body.Points.Length);
        fields.Span.Clear();
        transfer.Add(Currents, fields.Array.AsMemory(0, body.Points.Length));
        return Radiation.Reaction.Of(fields.Span, currents);
    }
}
