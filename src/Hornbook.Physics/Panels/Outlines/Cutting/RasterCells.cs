using Hornbook.Physics.Panels.Outlines.Boundaries;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;

namespace Hornbook.Physics.Panels.Outlines.Cutting;

/// <summary>Cells of any region: an even raster over its box; what the outline cuts counts with its own area and centre of area.</summary>
/// <remarks>
/// The region is halved along lines of the raster again and again. A part that fills its box is filled with whole cells at once, so that the
/// geometry library is asked only along the outline.
/// </remarks>
internal sealed class RasterCells
{
    // What is missing by rounding only.
    private const double Whole = 1.0 - 1e-9;

    // A cell whose centre of area falls into an opening is quartered; five times is a 32nd of the spacing.
    private const int MostQuarterings = 5;

    private readonly Region _region;
    private readonly Raster _raster;
    private readonly CellCollection _cells;

    internal RasterCells(Region region, double spacing)
    {
        _region = region;
        _raster = Raster.Over(region.Area.EnvelopeInternal, spacing);
        _cells = new CellCollection(_raster, region);
    }

    internal IReadOnlyList<Cell> Cut()
    {
        Cut(_region.Area, new RasterBlock(0, _raster.Columns, 0, _raster.Rows));
        return _cells.WithoutSlivers();
    }

    private void Cut(Geometry part, RasterBlock block)
    {
        Envelope box = _raster.Box(block);
        if (part.IsEmpty)
        {
            return;
        }

        if (part.Area >= Whole * box.Area)
        {
            _cells.Fill(block);
        }
        else if (block.IsCell)
        {
            Add(part, box, block, MostQuarterings);
        }
        else
        {
            (RasterBlock first, RasterBlock second) = block.Halves();
            Cut(Inside(part, _raster.Box(first)), first);
            Cut(Inside(part, _raster.Box(second)), second);
        }
    }

    private void Add(Geometry part, Envelope box, RasterBlock block, int quarterings)
    {
        // A quarter that the outline misses comes as a polygon without corners.
        foreach (Geometry polygon in PolygonExtracter.GetPolygons(part).Where(polygon => polygon.Area > 0.0))
        {
            Coordinate centre = Centroid.GetCentroid(polygon);
            if (IsIn(centre, polygon))
            {
                _cells.Add(block, FlatCell.At(centre.X, centre.Y, polygon.Area));
            }
            else if (quarterings > 0)
            {
                Quarters(box).ForEach(quarter => Add(Inside(polygon, quarter), quarter, block, quarterings - 1));
            }
            else
            {
                Point inside = polygon.InteriorPoint;
                _cells.Add(block, FlatCell.At(inside.X, inside.Y, polygon.Area));
            }
        }
    }

    private bool IsIn(Coordinate point, Geometry polygon) =>
        SimplePointInAreaLocator.Locate(point, polygon) == Location.Interior && _region.Contains(new Vector(0.0, point.X, point.Y));

    private static List<Envelope> Quarters(Envelope box)
    {
        Coordinate middle = box.Centre;
        return
        [
            new Envelope(box.MinX, middle.X, box.MinY, middle.Y), new Envelope(middle.X, box.MaxX, box.MinY, middle.Y),
            new Envelope(box.MinX, middle.X, middle.Y, box.MaxY), new Envelope(middle.X, box.MaxX, middle.Y, box.MaxY),
        ];
    }

    // Lines and points in which a part only touches the box are left out.
    private static Geometry Inside(Geometry part, Envelope box)
    {
        if (!part.EnvelopeInternal.Intersects(box))
        {
            return GeometryFactory.Default.CreatePolygon();
        }

        Geometry common = OverlayNGRobust.Overlay(part, GeometryFactory.Default.ToGeometry(box), SpatialFunction.Intersection);
        return common is Polygon ? common : GeometryFactory.Default.BuildGeometry(PolygonExtracter.GetPolygons(common));
    }
}
