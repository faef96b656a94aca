namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>How errors within a tolerance are distributed.</summary>
public enum ErrorLaw
{
    /// <summary>Any error within ± the tolerance is as likely as another, none beyond (JCGM 101: little is known but the limits).</summary>
    Uniform,

    /// <summary>Normal, with ± the tolerance holding 95 % of all pieces: standard deviation = tolerance/1.96.</summary>
    Normal,
}
