namespace Hornbook.Bench.Beginnings;

/// <summary>What is asked of somebody who begins; the size of the table is two numbers.</summary>
public enum BenchQuestion
{
    /// <summary>At which frequency the source swings.</summary>
    Frequency,

    /// <summary>How much it can give at most.</summary>
    Power,

    /// <summary>Which antennas there are.</summary>
    Antennas,

    /// <summary>How long the table is.</summary>
    TableLength,

    /// <summary>How wide the table is.</summary>
    TableWidth,

    /// <summary>Before whom it is shown.</summary>
    Audience,
}
