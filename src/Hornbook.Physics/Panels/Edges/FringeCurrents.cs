using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Edges;

/// <summary>The fringe currents of a whole sheet: those of each rim, and what the rim opposite throws back of them.</summary>
/// <remarks>
/// The current across the sheet that a rim sends out must stop at the next rim; that calls up a fringe current there as a wave along the sheet would. Without it a sheet
/// of half a wavelength is 1 dB off for a field across its rims, with it 0.15 dB (docs: physics/edges). What is thrown back a second time is left out. Eq. edges (8).
/// </remarks>
internal static class FringeCurrents
{
    /// <summary>Adds the fringe currents of the waves that arrive on one face.</summary>
    /// <param name="links">Cells, feet and crossings.</param>
    /// <param name="feet">The feet of the links in the frame of the field, in their order.</param>
    /// <param name="arriving">The field that arrives at each foot on that face, without that of the sheet itself.</param>
    /// <param name="face">The face.</param>
    /// <param name="wavenumber">k [1/m]; &gt; 0.</param>
    /// <param name="densities">J of each cell [A/m].</param>
    internal static void Add(
        EdgeLinks links, RimFoot[] feet, FieldSample[] arriving, SheetFace face, double wavenumber, Span<ComplexVector> densities)
    {
        FringeCurrent[] first = new FringeCurrent[feet.Length], thrownBack = new FringeCurrent[feet.Length];
        for (int i = 0; i < feet.Length; i++)
        {
            first[i] = new FringeCurrent(EdgeWave.Of(arriving[i], feet[i], face, wavenumber));
        }

        foreach (RimCrossing crossing in links.Crossings)
        {
            thrownBack[crossing.To] = first[crossing.From].ThrownBack(crossing, feet[crossing.To], face);
        }

        foreach (EdgeLink link in links.Links)
        {
            densities[link.Cell] += first[link.Foot].OnCell(link) + thrownBack[link.Foot].OnCell(link);
        }
    }
}
