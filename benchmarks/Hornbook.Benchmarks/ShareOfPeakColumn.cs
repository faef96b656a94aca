using System.Globalization;
using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using Hornbook.Benchmarks.Radiation;

namespace Hornbook.Benchmarks;

/// <summary>The shortest time of the peak benchmark of a width over the shortest time of the kernel of the same width.</summary>
public sealed class ShareOfPeakColumn : IColumn
{
    public string Id => nameof(ShareOfPeakColumn);

    public string ColumnName => "Share of peak";

    public bool AlwaysShow => false;

    public ColumnCategory Category => ColumnCategory.Custom;

    public int PriorityInCategory => 0;

    public bool IsNumeric => true;

    public UnitType UnitType => UnitType.Dimensionless;

    public string Legend => "Peak arithmetic time / time, shortest of each";

    public bool IsAvailable(Summary summary) => summary.BenchmarksCases.Any(c => c.Descriptor.Type == typeof(RadiatedFieldBenchmarks));

    public bool IsDefault(Summary summary, BenchmarkCase benchmarkCase) => false;

    public string GetValue(Summary summary, BenchmarkCase benchmarkCase) => GetValue(summary, benchmarkCase, summary.Style);

    public string GetValue(Summary summary, BenchmarkCase benchmarkCase, SummaryStyle style)
    {
        string name = benchmarkCase.Descriptor.WorkloadMethod.Name;
        string peakName = name.Replace("Kernel", "Peak", StringComparison.Ordinal);
        BenchmarkCase? peak = summary.BenchmarksCases.FirstOrDefault(c => c.Descriptor.WorkloadMethod.Name == peakName);
        return peakName != name && peak is not null && Shortest(summary, peak) / Shortest(summary, benchmarkCase) is double share
            ? share.ToString("P0", CultureInfo.InvariantCulture)
            : "-";
    }

    private static double? Shortest(Summary summary, BenchmarkCase benchmarkCase) => summary[benchmarkCase]?.ResultStatistics?.Min;
}
