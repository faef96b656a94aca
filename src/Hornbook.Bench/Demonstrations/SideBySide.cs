using System.Runtime.ExceptionServices;

namespace Hornbook.Bench.Demonstrations;

/// <summary>Work on many things at a time: where one has no work for a core, another one has.</summary>
internal static class SideBySide
{
    /// <summary>What is made of each, in their order.</summary>
    /// <param name="items">The things.</param>
    /// <param name="work">What is done with one.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>The results. Where one of them fails, its exception comes out as if it had been made alone.</returns>
    internal static TResult[] Each<T, TResult>(IReadOnlyList<T> items, Func<T, TResult> work, CancellationToken cancellation)
    {
        TResult[] results = new TResult[items.Count];
        try
        {
            Parallel.For(0, items.Count, new ParallelOptions { CancellationToken = cancellation }, i => results[i] = work(items[i]));
        }
        catch (AggregateException several)
        {
            ExceptionDispatchInfo.Throw(several.Flatten().InnerExceptions[0]);
        }

        return results;
    }
}
