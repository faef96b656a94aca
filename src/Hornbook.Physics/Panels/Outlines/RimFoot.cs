namespace Hornbook.Physics.Panels.Outlines;

/// <summary>The point of a rim that is nearest to a point of the sheet.</summary>
/// <param name="Place">Where [m].</param>
/// <param name="Inward">Unit vector in the sheet, at right angles to the rim, from the rim into the sheet.</param>
/// <param name="Normal">Unit vector out of the front face at the rim.</param>
/// <param name="Distance">From the rim to the point [m].</param>
public readonly record struct RimFoot(Vector Place, Vector Inward, Vector Normal, double Distance);
