using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using Perfolizer.Horology;

namespace Hornbook.Benchmarks;

/// <summary>Many iterations of a few milliseconds: on a machine that others use as well, the shortest of them ran undisturbed.</summary>
public sealed class ShortIterations : ManualConfig
{
    public ShortIterations()
    {
        AddJob(Job.Default.WithWarmupCount(10).WithIterationTime(TimeInterval.FromMilliseconds(4)).WithIterationCount(100));
        ArtifactsPath = Path.Combine("artifacts", "benchmarks");
        AddColumn(StatisticColumn.Min, StatisticColumn.Median, new ShareOfPeakColumn());
        HideColumns("Error", "StdDev", "RatioSD", "Alloc Ratio");
    }
}
