using System.Collections.Concurrent;
using Hornbook.Physics.Panels.Edges;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation.Mirrorings;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Panels.Exchange.Symmetries;

/// <summary>Which mirrorings in its own frame leave a panel as it is, cells, edges and sheet, and the part of it that is then enough. Worked out when asked for; safe for use on several threads at once.</summary>
internal sealed class PanelSymmetry
{
    // Of the side of a cell: how far an image may lie from its cell.
    private const double SamePlace = 1e-3;

    // Tables of grids are interpolated alike for either side to rounding.
    private const double SameSheet = 1e-9;

    // Directions of arrival in which a sheet is asked; none is the image of another.
    private static readonly (double Across, double Along)[] Directions = [(0.31, 0.17), (-0.52, 0.44), (0.08, -0.73)];

    private readonly Cell[] _cells;
    private readonly EdgeLinks? _edges;
    private readonly ISheetResponse _response;
    private readonly ConcurrentDictionary<Mirroring, int[]?> _images = new();
    private readonly ConcurrentDictionary<(bool Sideways, bool Upright, bool HalfTurn), PanelPart> _parts = new();

    /// <param name="cells">The panel's cells, own frame.</param>
    /// <param name="edges">Its edge currents; null where it has none.</param>
    /// <param name="response">Its sheet.</param>
    internal PanelSymmetry(Cell[] cells, EdgeLinks? edges, ISheetResponse response) => (_cells, _edges, _response) = (cells, edges, response);

    /// <summary>Whether a mirroring leaves it as it is.</summary>
    internal bool Has(Mirroring mirroring) => Images(mirroring) is not null;

    /// <summary>The part that is enough with some mirrorings.</summary>
    /// <param name="mirrorings">Those that the panel has; with two of them the third too.</param>
    internal PanelPart Part(IReadOnlyCollection<Mirroring> mirrorings) => _parts.GetOrAdd(
        (mirrorings.Contains(Mirroring.Sideways), mirrorings.Contains(Mirroring.Upright), mirrorings.Contains(Mirroring.HalfTurn)), _ => Cut(mirrorings));

    // The side to the left, above, or both: rows of cells stay rows. What lies on the line between is worked out, though half of it would do.
    private PanelPart Cut(IReadOnlyCollection<Mirroring> mirrorings)
    {
        bool upperHalf = mirrorings.Contains(Mirroring.Upright) || mirrorings.Contains(Mirroring.HalfTurn), leftHalf = mirrorings.Contains(Mirroring.Sideways);
        bool IsIn(Cell cell) => (!leftHalf || cell.Centre.Y >= -Within(cell)) && (!upperHalf || cell.Centre.Z >= -Within(cell));
        int[] places = [.. Enumerable.Range(0, _cells.Length).Where(i => IsIn(_cells[i]))];
        int[] numbers = new int[_cells.Length];
        Array.Fill(numbers, -1);
        for (int i = 0; i < places.Length; i++)
        {
            numbers[places[i]] = i;
        }

        CellImage[] rest = [.. Enumerable.Range(0, _cells.Length).Where(i => numbers[i] < 0).Select(i => mirrorings
            .Select(mirroring => new CellImage(i, numbers[Images(mirroring)![i]], mirroring)).First(image => image.Of >= 0))];
        return new PanelPart(Array.ConvertAll(places, i => _cells[i]), _edges?.Among(numbers), places, rest);
    }

    private int[]? Images(Mirroring mirroring) => _images.GetOrAdd(mirroring, IsSheetAlike(mirroring) ? Found : _ => null);

    private int[]? Found(Mirroring mirroring)
    {
        int[]? images = MirrorImages.Among(Array.ConvertAll(_cells, cell => cell.Centre), mirroring, _cells.Min(Within));
        return images is not null && Enumerable.Range(0, images.Length).All(i => IsAlike(_cells[i], _cells[images[i]], mirroring)) ? images : null;
    }

    private static double Within(Cell cell) => SamePlace * Math.Sqrt(cell.Area);

    private static bool IsAlike(Cell cell, Cell image, Mirroring mirroring) =>
        Math.Abs(image.Area - cell.Area) <= SamePlace * cell.Area
        && (image.Normal - MirrorImages.Of(mirroring, cell.Normal)).Length <= SamePlace
        && Vector.Cross(image.Across, MirrorImages.Of(mirroring, cell.Across)).Length <= SamePlace;

    private bool IsSheetAlike(Mirroring mirroring) => Directions.All(way => IsSheetAlike(SheetFace.Front, way, mirroring) && IsSheetAlike(SheetFace.Back, way, mirroring));

    private bool IsSheetAlike(SheetFace face, (double Across, double Along) way, Mirroring mirroring)
    {
        Vector image = MirrorImages.Of(mirroring, new Vector(0.0, way.Across, way.Along));
        SheetMatrices here = _response.Arriving(face, way.Across, way.Along), there = _response.Arriving(face, image.Y, image.Z);
        double sign = MirrorImages.Handedness(mirroring);
        return IsAlike(here.Reflection.Mirrored(sign), there.Reflection) && IsAlike(here.Transmission.Mirrored(sign), there.Transmission);
    }

    private static bool IsAlike(TangentialMatrix a, TangentialMatrix b) =>
        IsAlike(a.AcrossAcross, b.AcrossAcross) && IsAlike(a.AcrossAlong, b.AcrossAlong) && IsAlike(a.AlongAcross, b.AlongAcross) && IsAlike(a.AlongAlong, b.AlongAlong);

    private static bool IsAlike(Complex a, Complex b) => (a - b).Magnitude <= SameSheet;
}
