namespace Hornbook.Bench.Demonstrations;

/// <summary>Which end of the bench.</summary>
public enum BenchEnd
{
    /// <summary>The sending end.</summary>
    Source,

    /// <summary>The receiving end.</summary>
    Receiver,
}
