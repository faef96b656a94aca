namespace Hornbook.Physics.Exposure;

/// <summary>Whom a limit protects.</summary>
public enum ExposureGroup
{
    /// <summary>Anybody: an audience.</summary>
    Public,

    /// <summary>People who were told what they work with: a demonstrator at most.</summary>
    Workers,
}
