using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>What a panel answers to what meets one of its faces: the moments of the cells that are worked out.</summary>
/// <param name="Face">The face.</param>
/// <param name="Electric">J dS [A m].</param>
/// <param name="Magnetic">M dS [V m]; null for metal, which has none.</param>
internal sealed record FaceAnswer(SheetFace Face, ComplexVector[] Electric, ComplexVector[]? Magnetic);
