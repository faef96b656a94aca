using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Panels;
using Complex = System.Numerics.Complex;

namespace Hornbook.Bench.Readings;

/// <summary>What the panels of a bench do to a link: all of a reading that takes long to compute.</summary>
/// <param name="Parts">The wave by way of each panel that stands, the table top first [-].</param>
/// <param name="Brightest">The middle of the lit part of each [m].</param>
/// <param name="SourceEcho">The wave thrown back into the source's guide [-].</param>
/// <param name="Unsettled">How much the link's wave may still move [-]; 0 where it has settled, since to ask takes as long as the wave itself.</param>
/// <param name="Sweeps">How often every panel answered to all others.</param>
/// <param name="Residue">What is still missing of the currents [-].</param>
/// <param name="IsSettled">Whether that is small enough.</param>
internal sealed record PanelWaves(
    IReadOnlyList<Complex> Parts, IReadOnlyList<Vector> Brightest, Complex SourceEcho, double Unsettled, int Sweeps, double Residue, bool IsSettled)
{
    /// <summary>All panels together [-].</summary>
    internal Complex Sum => Parts.Aggregate(Complex.Zero, (sum, part) => sum + part);

    internal static PanelWaves Of(Illumination lit, Antenna receiver, Pose receiverPose) => new(
        lit.PanelParts(receiver, receiverPose),
        [.. Enumerable.Range(0, lit.Panels.Count).Select(lit.Brightest)],
        lit.SourceEcho(),
        lit.IsSettled ? 0.0 : lit.Unsettled(receiver, receiverPose),
        lit.Sweeps,
        lit.Residue,
        lit.IsSettled);

    /// <summary>A mixture of waves.</summary>
    /// <param name="waves">By way of the same panels; at least one.</param>
    /// <param name="shares">The share of each [-], as an interpolation has them; negative ones too.</param>
    /// <returns>How well it has settled is not smooth: as badly as the worst of them.</returns>
    internal static PanelWaves Mixed(PanelWaves[] waves, double[] shares) => waves.MaxBy(part => part.Residue)! with
    {
        Parts = [.. waves[0].Parts.Select((_, panel) => Mixed(shares, i => waves[i].Parts[panel]))],
        Brightest = [.. waves[0].Brightest.Select((_, panel) => Enumerable.Range(0, waves.Length).Aggregate(Vector.Zero, (sum, i) => sum + (waves[i].Brightest[panel] * shares[i])))],
        SourceEcho = Mixed(shares, i => waves[i].SourceEcho),
    };

    private static Complex Mixed(double[] shares, Func<int, Complex> part) =>
        Enumerable.Range(0, shares.Length).Aggregate(Complex.Zero, (sum, i) => sum + (shares[i] * part(i)));
}
