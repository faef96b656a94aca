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
    // So many links of cells to feet, some 0.1 ms of them, are worth a second thread. As many shares whatever the machine, so that every sum is the same to the last bit.
    private const int WorthSharing = 3000;
    private const int Shares = 4;

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

        EdgeWave[][] all = [waves, RimExchange.Between(links, feet, waves, face, throughAir: false), RimExchange.Between(links, feet, waves, face, throughAir: true)];
        if (links.Links.Length < WorthSharing)
        {
            Add(links, all, 0, 1, densities);
            return;
        }

        int cells = densities.Length;
        ComplexVector[][] shares = new ComplexVector[Shares][];
        Parallel.For(0, Shares, share => Add(links, all, share, Shares, shares[share] = new ComplexVector[cells]));
        foreach (ComplexVector[] share in shares)
        {
            PhasorSums.Add(densities, share, 1.0);
        }
    }

    // Every so many feet, from a first one on.
    private static void Add(EdgeLinks links, EdgeWave[][] waves, int first, int step, Span<ComplexVector> densities)
    {
        foreach (EdgeWave[] arriving in waves)
        {
            for (int foot = first; foot < arriving.Length; foot += step)
            {
                if (!arriving[foot].IsNone)
                {
                    FringeKernel.Add(new FringeCurrent(arriving[foot]), links.Columns, foot, densities);
                }
            }
        }
    }
}
