using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>What panels that stand parallel to a larger one and near to it will still throw to and fro with it, found with their images in it.</summary>
/// <remarks>
/// Eq. panels (6): of a change r that a sweep makes, d = r + K d is still to come, with K the way to the mirror and back. Found like that, it is exact but for the ends of the
/// mirror and for directions of travel that change on the way; the next sweep tells what is left.
/// </remarks>
internal sealed class ImageCorrection
{
    // Of the first step, of what is still to come, or of the currents: more is left by what images do not know, or by the sweeps.
    private const double SettledOfFirst = 0.03;
    private const double Settled = 0.01;
    private const double SettledOfAll = 0.25 * Illumination.SettledResidue;
    private const int MostSteps = 40;

    // What a mirror returns is no more than what was sent, so at least half of a change is left of it in the end. Less than this says that the panel stands nearer than its cells can tell.
    private const double LeastLeft = 0.4;

    // Steps are as true for the next sweep as for this one: the first learns, the others know.
    private const int StepsRemembered = 15;

    private readonly MirrorImage?[] _images;
    private readonly SweepAcceleration[] _learnt;

    private ImageCorrection(MirrorImage?[] images, int[] mirrors) =>
        (_images, Mirrors, _learnt) = (images, mirrors, Array.ConvertAll(images, _ => new SweepAcceleration(StepsRemembered)));

    /// <summary>The panels in which others have their images.</summary>
    internal IReadOnlyList<int> Mirrors { get; }

    /// <summary>For panels where they stand; null where none has an image in another.</summary>
    internal static ImageCorrection? Of(PanelExchange exchange)
    {
        MirrorImage?[] images = new MirrorImage?[exchange.Count];
        List<int> larger = [], mirrors = [];
        foreach (int panel in Enumerable.Range(0, exchange.Count).OrderByDescending(i => Area(exchange.Posed(i).Panel.Panel.Surface)))
        {
            (int mirror, images[panel]) = larger.Select(other => (other, exchange.Image(panel, other))).Where(found => found.Item2 is not null).DefaultIfEmpty((panel, null)).MinBy(found => found.Item2?.Gap);
            (mirror == panel ? larger : mirrors).Add(mirror);
        }

        return mirrors.Count == 0 ? null : new ImageCorrection(images, [.. mirrors.Distinct()]);
    }

    /// <summary>A panel's answer with what is still to come of it; the answer itself where the panel has no image.</summary>
    /// <param name="panel">Which.</param>
    /// <param name="before">Its currents that the mirror has answered to.</param>
    /// <param name="answer">Its answer to the mirror and all others.</param>
    /// <param name="arrivals">What it answered to.</param>
    internal CurrentSamples Corrected(int panel, CurrentSamples before, CurrentSamples answer, Arrivals arrivals)
    {
        if (_images[panel] is not { } image || image.Near(arrivals) is not { } near)
        {
            return answer;
        }

        CurrentSamples change = before.Count == 0 ? answer : answer.Plus(before, -1.0), settling = Settling(image, change, near, _learnt[panel], answer.Squared());
        return settling.Squared() < LeastLeft * LeastLeft * change.Squared() ? answer
            : before.Count == 0 ? settling
            : before.Plus(settling, 1.0);
    }

    private static double Area(PanelSurface surface) => surface.Width * surface.Height;

    private static CurrentSamples Settling(MirrorImage image, CurrentSamples change, NearbyAnswer near, SweepAcceleration learnt, double wholeSquared)
    {
        learnt.Leap();
        (CurrentSamples[] before, double first) = ([change], 0.0);
        for (int steps = 1; true; steps++)
        {
            CurrentSamples[] after = [change.Plus(image.Returned(before[0], near), 1.0)];
            double moved = PanelSweeps.Change(before, after);
            first = steps == 1 ? moved : first;
            if (moved <= Math.Max(Settled, SettledOfFirst * first) || moved * moved * after[0].Squared() <= SettledOfAll * SettledOfAll * wholeSquared || steps == MostSteps)
            {
                return after[0];
            }

            before = learnt.Next(before, after);
        }
    }
}
