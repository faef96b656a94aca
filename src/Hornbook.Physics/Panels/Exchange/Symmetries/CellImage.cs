using Hornbook.Physics.Radiation.Mirrorings;

namespace Hornbook.Physics.Panels.Exchange.Symmetries;

/// <summary>A cell that is the image of one that is worked out.</summary>
/// <param name="Cell">Which of the panel's cells it is.</param>
/// <param name="Of">The cell of the part that it is the image of.</param>
/// <param name="By">The mirroring, in the panel's own frame.</param>
internal readonly record struct CellImage(int Cell, int Of, Mirroring By);
