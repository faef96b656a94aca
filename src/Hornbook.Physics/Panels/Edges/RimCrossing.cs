namespace Hornbook.Physics.Panels.Edges;

/// <summary>The way of a wave from a foot on one rim to a foot on the rim opposite: over the sheet, or through the air of a slit.</summary>
/// <param name="From">Index of the foot from which it starts.</param>
/// <param name="To">Index of the foot where it ends.</param>
/// <param name="Distance">Between the rims [m]; &gt; 0.</param>
/// <param name="Ahead">How far its end lies ahead of where it starts, along inward × front normal at the start [m].</param>
/// <param name="Spreading">Amplitude that a curved rim leaves on the way [-].</param>
/// <param name="ThroughAir">Whether there is no sheet on the way.</param>
internal readonly record struct RimCrossing(int From, int To, double Distance, double Ahead, double Spreading, bool ThroughAir);
