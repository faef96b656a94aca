using Hornbook.Physics.Panels.Outlines.Boundaries;
using Hornbook.Physics.Panels.Outlines.Shapes;

namespace Hornbook.Physics.Panels.Outlines.Cutting;

/// <summary>Cells of what is bounded by circles about one centre: pieces of rings as far as the outermost circle, a raster beyond it.</summary>
internal static class PolarCells
{
    /// <summary>The cells, or null where a circle is cut or has another centre, or a straight side comes within the outermost one.</summary>
    internal static IReadOnlyList<Cell>? Of(Region region, BoundaryPiece[] boundary, double spacing)
    {
        BoundaryPiece[] circles = Array.FindAll(boundary, piece => piece.Stroke is CircleStroke);
        if (circles.Length == 0)
        {
            return null;
        }

        Vector centre = ((CircleStroke)circles[0].Stroke).Centre;
        double[] radii = [0.0, .. circles.Select(piece => ((CircleStroke)piece.Stroke).Radius).Order()];
        if (!Array.TrueForAll(boundary, piece => IsFullCircleAbout(centre, piece, region.Tolerance) || IsBeyond(centre, radii[^1], piece)))
        {
            return null;
        }

        List<Cell> cells = [];
        for (int i = 1; i < radii.Length; i++)
        {
            if (region.Contains(centre + new Vector(0.0, 0.5 * (radii[i - 1] + radii[i]), 0.0)))
            {
                Fill(cells, centre, radii[i - 1], radii[i], spacing);
            }
        }

        return circles.Length == boundary.Length ? cells : [.. cells, .. Beyond(region, centre, radii[^1], spacing)];
    }

    private static bool IsFullCircleAbout(Vector centre, BoundaryPiece piece, double tolerance) =>
        piece.Stroke is CircleStroke circle && (circle.Centre - centre).Length <= tolerance && piece.To - piece.From >= circle.Length - tolerance;

    private static bool IsBeyond(Vector centre, double radius, BoundaryPiece piece)
    {
        if (piece.Stroke is not LineStroke line)
        {
            return false;
        }

        double nearest = Math.Clamp(Vector.Dot(centre - line.Start, line.Direction), piece.From, piece.To);
        return (line.At(nearest) - centre).Length > radius;
    }

    private static IReadOnlyList<Cell> Beyond(Region region, Vector centre, double radius, double spacing)
    {
        Piece inside = Piece.Removed(new DiscShape(centre.Y, centre.Z, radius));
        return new RasterCells(new Region([.. region.Pieces, inside]), spacing).Cut();
    }

    private static void Fill(List<Cell> cells, Vector centre, double inner, double outer, double spacing)
    {
        foreach (RingSector sector in RingSector.Divide(inner, outer, spacing, spacing))
        {
            double area = 0.5 * sector.Angle * ((sector.Outer * sector.Outer) - (sector.Inner * sector.Inner));
            double r = sector.CentreRadius;
            foreach (double direction in sector.Directions)
            {
                cells.Add(FlatCell.At(centre.Y + (r * Math.Cos(direction)), centre.Z + (r * Math.Sin(direction)), area));
            }
        }
    }
}
