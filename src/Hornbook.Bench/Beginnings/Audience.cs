namespace Hornbook.Bench.Beginnings;

/// <summary>Before whom a bench is shown.</summary>
public enum Audience
{
    /// <summary>A few people who stand around the table and may take hold of things.</summary>
    AroundTheTable,

    /// <summary>A class that sits before it.</summary>
    Class,

    /// <summary>A hall that hears it through large loudspeakers and sees little of the table.</summary>
    Hall,
}
