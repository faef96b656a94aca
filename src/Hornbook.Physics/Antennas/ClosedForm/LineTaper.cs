namespace Hornbook.Physics.Antennas.ClosedForm;

/// <summary>How strong the field is along one side of a mouth fed by TE10.</summary>
public enum LineTaper
{
    /// <summary>The same everywhere: the E plane.</summary>
    Uniform,

    /// <summary>Half a cosine, zero at both ends: the H plane.</summary>
    Cosine,
}
