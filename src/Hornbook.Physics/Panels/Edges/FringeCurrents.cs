using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Edges;

/// <summary>The fringe currents of a whole sheet: those of each rim, and of what rims opposite send to each other.</summary>
/// <remarks>
/// The current across the sheet that a rim sends out must stop at the next rim, and the field along a rim that goes through the air of a slit meets the next rim edge-on. Without the
/// one a strip of half a wavelength is 1 dB off for a field across its rims, without the other a slit 2 dB for a field along them; with them 0.02 and 0.2 dB (docs: physics/edges).
/// Eq. edges (8) and (9).
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
        EdgeLinks links, RimFoot[] feet, ReadOnlySpan<FieldSample> arriving, SheetFace face, double wavenumber, Span<ComplexVector> densities)
    {
        EdgeWave[] waves = new EdgeWave[feet.Length];
        for (int i = 0; i < waves.Length; i++)
        {
            waves[i] = EdgeWave.Of(arriving[i], feet[i], face, wavenumber);
        }

        Add(links, waves, densities);
        Add(links, RimExchange.Between(links, feet, waves, face, throughAir: false), densities);
        Add(links, RimExchange.Between(links, feet, waves, face, throughAir: true), densities);
    }

    private static void Add(EdgeLinks links, EdgeWave[] waves, Span<ComplexVector> densities)
    {
        for (int foot = 0; foot < waves.Length; foot++)
        {
            if (!waves[foot].IsNone)
            {
                FringeKernel.Add(new FringeCurrent(waves[foot]), links.Columns, foot, densities);
            }
        }
    }
}
