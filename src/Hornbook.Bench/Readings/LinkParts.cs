using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Complex = System.Numerics.Complex;

namespace Hornbook.Bench.Readings;

/// <summary>A link and the ways by which its wave came.</summary>
/// <param name="Source">Sending antenna.</param>
/// <param name="SourcePose">Its pose.</param>
/// <param name="Receiver">Receiving antenna.</param>
/// <param name="ReceiverPose">Its pose.</param>
/// <param name="Ways">Straight, then by way of each panel.</param>
/// <param name="Solution">How the panels were solved; null without any.</param>
internal sealed record LinkParts(
    Antenna Source, Pose SourcePose, Antenna Receiver, Pose ReceiverPose, IReadOnlyList<LinkWay> Ways, PanelSolution? Solution)
{
    /// <summary>Power delivered over power sent [-].</summary>
    internal double Link { get; } = Squared(Sum(Ways));

    /// <summary>Mouth to mouth [m].</summary>
    internal double Distance => (ReceiverPose.Position - SourcePose.Position).Length;

    internal static LinkParts Of(Antenna source, Pose sourcePose, Antenna receiver, Pose receiverPose, PanelWaves panels)
    {
        LinkWay straight = new(Physics.Links.Link.Amplitude(source, sourcePose, receiver, receiverPose), receiverPose.Position, sourcePose.Position);
        List<LinkWay> ways = [straight, .. panels.Parts.Zip(panels.Brightest, (wave, place) => new LinkWay(wave, place, place))];
        return new LinkParts(source, sourcePose, receiver, receiverPose, ways, SolutionOf(panels, Sum(ways)));
    }

    private static PanelSolution? SolutionOf(PanelWaves panels, Complex wave) => panels.Parts.Count == 0
        ? null
        : new PanelSolution(panels.Sweeps, panels.Residue, panels.IsSettled, 2.0 * Decibels.FromRatio(1.0 + (panels.Unsettled / wave.Magnitude)));

    private static Complex Sum(IReadOnlyList<LinkWay> ways) => ways.Aggregate(Complex.Zero, (sum, way) => sum + way.Wave);

    private static double Squared(Complex wave) => (wave.Real * wave.Real) + (wave.Imaginary * wave.Imaginary);
}

/// <summary>One way from the source to the receiver.</summary>
/// <param name="Wave">What came by it [-].</param>
/// <param name="FromSource">Where the source sees it go [m].</param>
/// <param name="FromReceiver">Where the receiver sees it come from [m].</param>
internal sealed record LinkWay(Complex Wave, Vector FromSource, Vector FromReceiver);
