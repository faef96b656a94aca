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
    /// <param name="magnetic">M dS of each cell of the part [V m]; null where none flow.</param>
    internal CurrentSamples Whole(Vector[] points, ComplexVector[] electric, ComplexVector[]? magnetic) => Part.IsWhole
        ? CurrentSamples.Keeping(points, electric, magnetic)
        : CurrentSamples.Keeping(points, Whole(electric, (by, j) => _symmetry.Electric(by, j)), magnetic is null ? null : Whole(magnetic, (by, m) => _symmetry.Magnetic(by, m)));

    /// <summary>The sum over all cells of something that is the same for a cell and its image.</summary>
    /// <param name="ofCell">Of each cell of the part, by its number there and in the panel.</param>
    internal Complex Sum(Func<int, int, Complex> ofCell)
    {
        Complex[] terms = [.. Part.Places.Select((place, i) => ofCell(i, place))];
        return Part.Rest.Aggregate(terms.Aggregate(Complex.Zero, (sum, term) => sum + term), (sum, image) => sum + terms[image.Of]);
    }

    private ComplexVector[] Whole(ComplexVector[] part, Func<Mirroring, ComplexVector, ComplexVector> image)
    {
        ComplexVector[] all = new ComplexVector[part.Length + Part.Rest.Length];
        for (int i = 0; i < part.Length; i++)
        {
            all[Part.Places[i]] = part[i];
        }

        foreach (CellImage cell in Part.Rest)
        {
            all[cell.Cell] = image(_ofBench[(int)cell.By], part[cell.Of]);
        }

        return all;
    }
}
