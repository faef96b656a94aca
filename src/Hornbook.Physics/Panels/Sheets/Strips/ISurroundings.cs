namespace Hornbook.Physics.Panels.Sheets.Strips;

/// <summary>What is on both sides of the strips, as their currents feel it.</summary>
internal interface ISurroundings
{
    /// <summary>The largest wave vector over k that travels along the strips' plane without dying out: 1 in air, at most √ε' on a board.</summary>
    double LargestGuided { get; }

    /// <summary>kd of the layer that the strips lie on [rad]; infinite in air.</summary>
    double LayerPhase { get; }

    /// <summary>The field of a current.</summary>
    /// <param name="across">k_u/k.</param>
    /// <param name="squaredAlong">(k_v/k)².</param>
    SpectralImpedance Of(double across, double squaredAlong);
}
