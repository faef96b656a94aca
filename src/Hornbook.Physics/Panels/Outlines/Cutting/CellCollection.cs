using Hornbook.Physics.Panels.Outlines.Boundaries;
using NetTopologySuite.Geometries;

namespace Hornbook.Physics.Panels.Outlines.Cutting;

/// <summary>The cells of a raster as they are found, whole ones and cut ones.</summary>
internal sealed class CellCollection
{
    // A sample for less than a twentieth of a cell is not worth its cost; its area goes to the nearest larger one.
    private const double SliverShare = 0.05;

    private readonly Raster _raster;
    private readonly Region _region;
    private readonly List<Cell> _cells = [];
    private readonly List<(Cell Cell, RasterBlock Place)> _slivers = [];

    // The cell that was found last in each place of the raster, −1 where there is none.
    private readonly int[] _inPlace;

    internal CellCollection(Raster raster, Region region)
    {
        _raster = raster;
        _region = region;
        _inPlace = new int[raster.Columns * raster.Rows];
        Array.Fill(_inPlace, -1);
    }

    /// <summary>Adds what was found in a place of the raster.</summary>
    internal void Add(RasterBlock place, Cell cell)
    {
        if (cell.Area < SliverShare * _raster.CellArea)
        {
            _slivers.Add((cell, place));
            return;
        }

        _inPlace[(place.Bottom * _raster.Columns) + place.Left] = _cells.Count;
        _cells.Add(cell);
    }

    /// <summary>Adds whole cells.</summary>
    internal void Fill(RasterBlock block)
    {
        for (int row = block.Bottom; row < block.Top; row++)
        {
            for (int column = block.Left; column < block.Right; column++)
            {
                RasterBlock place = new(column, column + 1, row, row + 1);
                Coordinate centre = _raster.Box(place).Centre;
                Add(place, FlatCell.At(centre.X, centre.Y, _raster.CellArea));
            }
        }
    }

    /// <summary>All cells, each sliver united with its nearest neighbour; one that stands alone is kept.</summary>
    internal IReadOnlyList<Cell> WithoutSlivers()
    {
        foreach ((Cell sliver, RasterBlock place) in _slivers)
        {
            int nearest = Neighbours(place).OrderBy(i => (_cells[i].Centre - sliver.Centre).Length).FirstOrDefault(-1);
            if (nearest < 0)
            {
                _cells.Add(sliver);
            }
            else
            {
                _cells[nearest] = United(_cells[nearest], sliver);
            }
        }

        return _cells;
    }

    private IEnumerable<int> Neighbours(RasterBlock place) =>
        from row in Enumerable.Range(place.Bottom - 1, 3)
        from column in Enumerable.Range(place.Left - 1, 3)
        where row >= 0 && row < _raster.Rows && column >= 0 && column < _raster.Columns
        let cell = _inPlace[(row * _raster.Columns) + column]
        where cell >= 0
        select cell;

    private Cell United(Cell cell, Cell sliver)
    {
        double area = cell.Area + sliver.Area;
        Vector centre = ((cell.Centre * cell.Area) + (sliver.Centre * sliver.Area)) * (1.0 / area);
        return cell with { Area = area, Centre = _region.Contains(centre) ? centre : cell.Centre };
    }
}
