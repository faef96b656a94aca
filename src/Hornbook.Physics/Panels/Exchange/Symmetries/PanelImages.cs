using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Mirrorings;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Panels.Exchange.Symmetries;

/// <summary>Where a panel stands on a bench with some symmetry: how the rest of its currents follows from those of its part. Immutable.</summary>
internal sealed class PanelImages
{
    private readonly BenchSymmetry _symmetry;

    // The bench's mirroring for each one in the panel's own frame.
    private readonly Mirroring[] _ofBench = new Mirroring[1 + (int)Mirroring.HalfTurn];

    /// <param name="posed">The panel and its pose.</param>
    /// <param name="symmetry">Of the bench on which it stands; the panel has all of it.</param>
    internal PanelImages(PosedPanel posed, BenchSymmetry symmetry)
    {
        _symmetry = symmetry;
        List<Mirroring> own = [];
        foreach (Mirroring ofBench in symmetry.All)
        {
            own.Add(symmetry.SeenBy(posed.Pose, ofBench) ?? throw new ArgumentException("a panel that is not its own image; the bench has no such symmetry"));
            _ofBench[(int)own[^1]] = ofBench;
        }

        Part = posed.Panel.Symmetry.Part(own);
    }

    /// <summary>The part that is worked out.</summary>
    internal PanelPart Part { get; }

    /// <summary>All currents.</summary>
    /// <param name="points">The cells of the panel where they stand [m].</param>
    /// <param name="electric">J dS of each cell of the part [A m].</param>
    /// <param name="magnetic">M dS of each cell of the part [V m].</param>
    internal CurrentSamples Whole(Vector[] points, ComplexVector[] electric, ComplexVector[] magnetic)
    {
        if (Part.IsWhole)
        {
            return CurrentSamples.Keeping(points, electric, magnetic);
        }

        ComplexVector[] allElectric = new ComplexVector[points.Length], allMagnetic = new ComplexVector[points.Length];
        for (int i = 0; i < electric.Length; i++)
        {
            (allElectric[Part.Places[i]], allMagnetic[Part.Places[i]]) = (electric[i], magnetic[i]);
        }

        foreach (CellImage image in Part.Rest)
        {
            Mirroring mirroring = _ofBench[(int)image.By];
            allElectric[image.Cell] = _symmetry.Electric(mirroring, electric[image.Of]);
            allMagnetic[image.Cell] = _symmetry.Magnetic(mirroring, magnetic[image.Of]);
        }

        return CurrentSamples.Keeping(points, allElectric, allMagnetic);
    }

    /// <summary>The sum over all cells of something that is the same for a cell and its image.</summary>
    /// <param name="ofCell">Of each cell of the part, by its number there and in the panel.</param>
    internal Complex Sum(Func<int, int, Complex> ofCell)
    {
        Complex[] terms = [.. Part.Places.Select((place, i) => ofCell(i, place))];
        return Part.Rest.Aggregate(terms.Aggregate(Complex.Zero, (sum, term) => sum + term), (sum, image) => sum + terms[image.Of]);
    }
}
