using Hornbook.Physics.Antennas;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Mirrorings;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>An antenna where it stands, as a body whose field comes to panels. Immutable.</summary>
internal sealed class Mouth
{
    private readonly Antenna _antenna;

    internal Mouth(Antenna antenna, Pose pose)
    {
        _antenna = antenna;
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
        Way.Between(Body, panel, Wavenumber, Way.FewPairsOnce).Add(Currents, arrivals);
        return arrivals;
    }
}
