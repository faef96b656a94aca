namespace Hornbook.Tabletop.Sharing;

/// <summary>What is computed for guests beside their pages: one thing of a kind at a time, so that a class never takes the machine from the person at the bench.</summary>
public sealed class GuestWork
{
    /// <summary>For what may wait: advice, keep-out distances, maps.</summary>
    public TaskScheduler Worker { get; } = OneAtATime();

    /// <summary>For readings that take longer than a hand moves; they do not wait behind what may wait.</summary>
    public TaskScheduler Readings { get; } = OneAtATime();

    private static TaskScheduler OneAtATime() => new ConcurrentExclusiveSchedulerPair(TaskScheduler.Default, maxConcurrencyLevel: 1).ConcurrentScheduler;
}
