using Hornbook.Physics.Antennas;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>An antenna where it stands, as a body whose field comes to panels. Immutable.</summary>
internal sealed class Mouth
{
    internal Mouth(Antenna antenna, Pose pose)
    {
        Currents = antenna.Currents.Posed(pose);
        Centre = pose.Position;
        Wavenumber = antenna.Wavenumber;
        Body = Body.Of(Currents.Points.ToArray(), Frame.Of(pose));
    }

    /// <summary>Its currents in the bench frame, for one watt radiated.</summary>
    internal CurrentSamples Currents { get; }

    /// <summary>Where they flow.</summary>
    internal Body Body { get; }

    /// <summary>The centre of the mouth [m].</summary>
    internal Vector Centre { get; }

    /// <summary>k [1/m].</summary>
    internal double Wavenumber { get; }

    /// <summary>What arrives at a panel straight from here.</summary>
    internal Arrivals Light(PanelInPlace panel)
    {
        Arrivals arrivals = panel.Nothing();
        Way.Between(Body, panel, Wavenumber, Way.FewPairsOnce).Add(Currents, arrivals);
        return arrivals;
    }
}
