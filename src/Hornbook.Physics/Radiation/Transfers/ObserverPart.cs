namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>Observers that one piece of work sees to, and the pairs that have something for them.</summary>
/// <param name="Box">The observers.</param>
/// <param name="Coarse">Which of the pairs that go by nodes, in their order.</param>
/// <param name="Direct">The pairs that are summed directly, in their order.</param>
internal sealed record ObserverPart(SampleBox Box, int[] Coarse, BoxPair[] Direct)
{
    /// <summary>Of all pairs.</summary>
    internal static ObserverPart Of(SampleBox box, BoxPair[] coarse, BoxPair[] direct) => new(
        box, [.. Enumerable.Range(0, coarse.Length).Where(i => Concerns(coarse[i], box))], [.. direct.Where(p => Concerns(p, box))]);

    private static bool Concerns(BoxPair pair, SampleBox box) => pair.Second.Holds(box) || box.Holds(pair.Second);
}
