using System.Runtime.InteropServices;
using Hornbook.Physics.Panels.Outlines;

namespace Hornbook.Physics.Panels.Edges;

/// <summary>Which cells of a panel carry the fringe currents of which points of its rims; in the panel's own frame. Immutable.</summary>
/// <remarks>
/// Every cell carries those of all rims that see it: the current across a rim falls only as 1/√x, and cut off after one, two or four wavelengths it
/// errs by 1 dB in the shadow (docs: physics/edges).
/// </remarks>
internal sealed class EdgeLinks
{
    // Feet nearer to each other than λ/8 share one field; its phase is carried on along the rim.
    private const double FeetPerWavelength = 8.0;

    // A rim within 45° of the direction of a nearer one, hole or slit, is hidden behind it.
    private const double HiddenCosine = 0.7;

    // Steps of cells that differ more than this from the side of a square of their area are not those of a raster along the rim.
    private const double RasterTolerance = 0.4;

    private EdgeLinks(RimFoot[] feet, EdgeLink[] links, RimCrossing[] crossings) =>
        (Feet, Links, Crossings, Columns) = (feet, links, crossings, new EdgeColumns(links, feet.Length));

    /// <summary>Points of the rims at which the arriving field is wanted.</summary>
    internal RimFoot[] Feet { get; }

    /// <summary>Cells with their feet.</summary>
    internal EdgeLink[] Links { get; }

    /// <summary>The same foot by foot.</summary>
    internal EdgeColumns Columns { get; }

    /// <summary>Which foot sends its current across the sheet to which other one: at most one to each.</summary>
    internal RimCrossing[] Crossings { get; }

    /// <summary>Links cells to rims.</summary>
    /// <param name="cells">The cells of a sheet.</param>
    /// <param name="rims">Its rims.</param>
    /// <param name="wavelength">λ [m]; &gt; 0.</param>
    internal static EdgeLinks Of(IReadOnlyList<Cell> cells, IReadOnlyList<Rim> rims, double wavelength)
    {
        SharedFeet shared = new(wavelength / FeetPerWavelength);
        List<EdgeLink> links = [];
        for (int cell = 0; cell < cells.Count; cell++)
        {
            foreach ((Rim rim, RimFoot foot) in Seen(cells[cell].Centre, rims))
            {
                (int index, double ahead) = shared.Share(rim, foot);
                double spreading = Spreading(rim, cells[cell].Centre, foot, wavelength);
                links.Add(new EdgeLink(cell, index, foot.Distance, Math.Sqrt(cells[cell].Area), ahead, spreading));
            }
        }

        SetBreadths(CollectionsMarshal.AsSpan(links));
        RimCrossing[] crossings = RimCrossings.Of(shared, rims, wavelength);
        return new EdgeLinks([.. shared.Feet], [.. links], crossings);
    }

    /// <summary>The links of some of the cells.</summary>
    /// <param name="numbers">The number of each cell among them; negative for the others.</param>
    internal EdgeLinks Among(int[] numbers) => new(Feet, [.. Links.Where(link => numbers[link.Cell] >= 0).Select(link => link with { Cell = numbers[link.Cell] })], Crossings);

    /// <summary>The rims that a point of the sheet sees, with its feet on them, nearest first.</summary>
    internal static List<(Rim Rim, RimFoot Foot)> Seen(Vector point, IReadOnlyList<Rim> rims)
    {
        List<(Rim Rim, RimFoot Foot)> seen = [];
        IEnumerable<(Rim Rim, RimFoot Foot)> nearestFirst =
            from rim in rims
            let foot = rim.Foot(point)
            where foot is { Distance: > 0.0 }
            orderby foot.Value.Distance
            select (rim, foot.Value);
        foreach ((Rim rim, RimFoot foot) in nearestFirst)
        {
            if (seen.TrueForAll(nearer => Vector.Dot(nearer.Foot.Inward, foot.Inward) < HiddenCosine))
            {
                seen.Add((rim, foot));
            }
        }

        return seen;
    }

    /// <summary>Amplitude at a point of a wave that starts at a rim [-].</summary>
    /// <remarks>
    /// From the breadth of the tube of rays: there over here, by the feet of two points beside this one. A rim of radius a gives a/(a ± x); where the rays
    /// meet, the field of a focus is no larger than a tenth of a wavelength before it.
    /// </remarks>
    internal static double Spreading(Rim rim, Vector point, RimFoot foot, double wavelength)
    {
        Vector step = Vector.Cross(foot.Inward, foot.Normal) * (0.02 * wavelength);
        if (rim.Foot(point + step) is not { } ahead || rim.Foot(point - step) is not { } behind)
        {
            return 1.0;
        }

        double ratio = (ahead.Place - behind.Place).Length / (2.0 * step.Length);
        return Math.Sqrt(Math.Min(ratio, 1.0 + (10.0 * foot.Distance / wavelength)));
    }

    // Cells in a raster along the rim share their foot, and the steps between them are their breadth.
    private static void SetBreadths(Span<EdgeLink> links)
    {
        links.Sort((a, b) => a.Foot != b.Foot ? a.Foot.CompareTo(b.Foot) : a.Distance.CompareTo(b.Distance));
        Span<double> steps = new double[links.Length];
        for (int i = 0; i < links.Length; i++)
        {
            steps[i] = Math.Min(Step(links, i - 1, i), Step(links, i, i + 1));
        }

        for (int i = 0; i < links.Length; i++)
        {
            double side = links[i].Breadth;
            links[i] = Math.Abs(steps[i] - side) <= RasterTolerance * side ? links[i] with { Breadth = steps[i] } : links[i];
        }
    }

    private static double Step(ReadOnlySpan<EdgeLink> links, int i, int next) =>
        i >= 0 && next < links.Length && links[i].Foot == links[next].Foot ? links[next].Distance - links[i].Distance : double.PositiveInfinity;
}
