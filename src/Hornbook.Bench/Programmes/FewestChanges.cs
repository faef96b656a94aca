namespace Hornbook.Bench.Programmes;

/// <summary>Chooses one way for each demonstration so that the whole show is heard best and little is changed between one and the next.</summary>
/// <remarks>The best path through the show, by dynamic programming [Bellman1957]: exact for these costs.</remarks>
internal static class FewestChanges
{
    // A change must bring this much, in doublings of the steps heard; to move an end takes longer than to turn a knob (judgement).
    private const double CostOfMove = 0.6;
    private const double CostOfGain = 0.3;

    /// <summary>The ways chosen, one for each demonstration.</summary>
    /// <param name="own">How the bench stands before the show.</param>
    /// <param name="show">The demonstrations in their order, each with one way at least.</param>
    internal static IReadOnlyList<Choice> Choose(Arrangement own, IReadOnlyList<Candidates> show)
    {
        if (show.Count == 0)
        {
            return [];
        }

        double[] worth = [.. show[0].Choices.Select(choice => choice.Merit.Worth - Cost(own, choice.Arrangement))];
        List<int[]> cameFrom = [];
        for (int i = 1; i < show.Count; i++)
        {
            IReadOnlyList<Choice> before = show[i - 1].Choices;
            int[] best = [.. show[i].Choices.Select(now => Enumerable.Range(0, before.Count).MaxBy(j => worth[j] - Cost(before[j].Arrangement, now.Arrangement)))];
            worth = [.. show[i].Choices.Select((now, j) => worth[best[j]] - Cost(before[best[j]].Arrangement, now.Arrangement) + now.Merit.Worth)];
            cameFrom.Add(best);
        }

        int at = Array.IndexOf(worth, worth.Max());
        Choice[] chosen = new Choice[show.Count];
        for (int i = show.Count - 1; i >= 0; i--)
        {
            chosen[i] = show[i].Choices[at];
            at = i > 0 ? cameFrom[i - 1][at] : at;
        }

        return chosen;
    }

    private static double Cost(Arrangement before, Arrangement now) =>
        (Math.Abs(before.Reach - now.Reach) > 1e-6 ? CostOfMove : 0.0) + (before.Gain == now.Gain ? 0.0 : CostOfGain);
}
