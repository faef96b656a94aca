namespace Hornbook.Physics.Exposure;

/// <summary>What kind of source a limit is written for.</summary>
public enum LimitScope
{
    /// <summary>Any source.</summary>
    AnySource,

    /// <summary>Installations that stay where they are, such as base stations: not a bench.</summary>
    FixedInstallations,

    /// <summary>Antennas that sweep past, so that the mean is far below the peak: not a bench.</summary>
    ScanningAntennas,
}
