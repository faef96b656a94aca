using CsCheck;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Outlines.Boundaries;
using Hornbook.Physics.Panels.Outlines.Shapes;

namespace Hornbook.Physics.Tests.Panels.Outlines;

/// <summary>Random flat panels of the size of the bench, and what is true of them by another way.</summary>
internal static class SampleOutlines
{
    private static readonly Gen<Shape> Rectangles =
        Gen.Select(Places, Places, Gen.Double[0.004, 0.2], Gen.Double[0.03, 0.2], Gen.Double[-3.0, 3.0],
            (y, z, width, height, turn) => (Shape)new RectangleShape(y, z, width, height, turn));

    private static readonly Gen<Shape> Discs = Gen.Select(Places, Places, Gen.Double[0.01, 0.1], (y, z, radius) => (Shape)new DiscShape(y, z, radius));

    private static readonly Gen<Shape> Rings =
        Gen.Select(Places, Places, Gen.Double[0.01, 0.08], Gen.Double[0.005, 0.05],
            (y, z, radius, breadth) => (Shape)new RingShape(y, z, radius, radius + breadth));

    private static readonly Gen<Shape> Stars =
        Gen.Double[0.02, 0.1].Array[3, 9].Select(radii => (Shape)new PolygonShape([.. radii.Select((r, i) => Corner(r, Math.Tau * i / radii.Length))]));

    private static readonly Gen<Shape> Shapes = Gen.OneOf(Rectangles, Discs, Rings, Stars);

    private static readonly Gen<Shape> Upright =
        Gen.Select(Places, Places, Gen.Double[0.004, 0.2], Gen.Double[0.03, 0.2],
            (y, z, width, height) => (Shape)new RectangleShape(AsCut(y), AsCut(z), AsCut(width), AsCut(height)));

    /// <summary>Anything added to and taken away from a plate.</summary>
    internal static Gen<FlatSurface> Any { get; } = Made(Shapes);

    /// <summary>Upright rectangles only.</summary>
    internal static Gen<FlatSurface> UprightOnly { get; } = Made(Upright);

    private static Gen<double> Places => Gen.Double[-0.15, 0.15];

    /// <summary>Area from the outline alone, by Green's theorem: ½∮(y dz − z dy), arcs as arcs [m²].</summary>
    internal static double AreaWithin(IEnumerable<BoundaryPiece> boundary) =>
        boundary.Sum(piece => (piece.SheetOnLeft ? 0.5 : -0.5) * Moment(piece));

    private static double Moment(BoundaryPiece piece)
    {
        Vector from = piece.Stroke.At(piece.From), to = piece.Stroke.At(piece.To);
        if (piece.Stroke is not CircleStroke circle)
        {
            return Vector.Cross(from, to).X;
        }

        return (circle.Radius * (piece.To - piece.From)) + Vector.Cross(circle.Centre, to - from).X;
    }

    private static Gen<FlatSurface> Made(Gen<Shape> shapes) =>
        Gen.Select(shapes, Gen.Bool, (shape, isSheet) => new Piece(shape, isSheet)).Array[0, 5]
            .Select(pieces => new FlatSurface(new RectangleShape(0.0, 0.0, 0.5, 0.4), pieces));

    // To a hundredth of a millimetre, as a file states it: sides within two millionths of the panel of each other, which random numbers without end have
    // now and then, may lose a piece of rim (docs: physics/outlines).
    private static double AsCut(double length) => Math.Round(length, 5);

    private static (double Y, double Z) Corner(double r, double angle) => (r * Math.Cos(angle), r * Math.Sin(angle));
}
