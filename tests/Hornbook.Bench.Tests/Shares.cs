namespace Hornbook.Bench.Tests;

/// <summary>Notes down the progress that it is told: reports arrive on many threads at once, and Progress would post them later.</summary>
internal sealed class Shares : IProgress<double>
{
    private readonly Lock _lock = new();

    public List<double> Told { get; } = [];

    public void Report(double value)
    {
        lock (_lock)
        {
            Told.Add(value);
        }
    }
}
