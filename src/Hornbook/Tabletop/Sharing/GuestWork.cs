namespace Hornbook.Tabletop.Sharing;

/// <summary>What is computed for guests beside their pages: one thing at a time, so that a class never takes the machine from the person at the bench.</summary>
public sealed class GuestWork
{
    public TaskScheduler Worker { get; } = new ConcurrentExclusiveSchedulerPair(TaskScheduler.Default, maxConcurrencyLevel: 1).ConcurrentScheduler;
}
