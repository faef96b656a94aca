using NetTopologySuite.Geometries;

namespace Hornbook.Physics.Panels.Outlines.Boundaries;

/// <summary>Finds where a region ends, with circles kept as circles.</summary>
/// <remarks>
/// Every line of every figure is cut where another one meets it. Between two cuts both sides of the line are the same all along, so that a point
/// close to the middle on either side tells whether the sheet ends there.
/// </remarks>
internal static class Boundary
{
    internal static BoundaryPiece[] Of(Region region)
    {
        Stroke[] strokes = [.. region.Pieces.SelectMany(piece => piece.Shape.Strokes)];
        List<double>[] cuts = Cuts(strokes, region.Tolerance);
        List<BoundaryPiece> found = [];
        for (int i = 0; i < strokes.Length; i++)
        {
            // Figures that share a side give it once.
            found.AddRange(Bounding(region, strokes[i], cuts[i])
                .Where(piece => !found.Exists(other => (other.Middle - piece.Middle).Length <= 2.0 * region.Tolerance)).ToArray());
        }

        return Joined(found);
    }

    private static List<double>[] Cuts(Stroke[] strokes, double tolerance)
    {
        List<double>[] cuts = Array.ConvertAll(strokes, stroke => stroke.IsClosed ? new List<double>() : [0.0, stroke.Length]);
        Envelope[] boxes = Array.ConvertAll(strokes, stroke => Around(stroke, tolerance));
        for (int i = 0; i < strokes.Length; i++)
        {
            for (int j = i + 1; j < strokes.Length; j++)
            {
                foreach (Vector point in boxes[i].Intersects(boxes[j]) ? Crossing.Of(strokes[i], strokes[j], tolerance) : [])
                {
                    cuts[i].Add(strokes[i].WayTo(point, tolerance)!.Value);
                    cuts[j].Add(strokes[j].WayTo(point, tolerance)!.Value);
                }
            }
        }

        return cuts;
    }

    private static Envelope Around(Stroke stroke, double tolerance)
    {
        Envelope box = stroke.Box(0.0, stroke.Length);
        box.ExpandBy(tolerance);
        return box;
    }

    private static IEnumerable<BoundaryPiece> Bounding(Region region, Stroke stroke, List<double> cuts)
    {
        List<double> ends = Distinct(stroke, cuts, region.Tolerance);
        for (int i = 1; i < ends.Count; i++)
        {
            double middle = 0.5 * (ends[i - 1] + ends[i]);
            Vector aside = stroke.Left(middle) * (2.0 * region.Tolerance);
            bool left = region.Contains(stroke.At(middle) + aside), right = region.Contains(stroke.At(middle) - aside);
            if (left != right)
            {
                yield return new BoundaryPiece(stroke, ends[i - 1], ends[i], left);
            }
        }
    }

    private static List<double> Distinct(Stroke stroke, List<double> cuts, double tolerance)
    {
        List<double> distinct = [];
        foreach (double cut in cuts.Order().Where(cut => distinct.Count == 0 || cut - distinct[^1] > tolerance))
        {
            distinct.Add(cut);
        }

        if (!stroke.IsClosed)
        {
            return distinct;
        }

        double first = distinct.Count > 0 ? distinct[0] : 0.0;
        return [first, .. distinct.Skip(1).Where(cut => first + stroke.Length - cut > tolerance), first + stroke.Length];
    }

    // A line that was cut where another only touches it is one piece again.
    private static BoundaryPiece[] Joined(List<BoundaryPiece> pieces)
    {
        List<BoundaryPiece> joined = [];
        foreach (BoundaryPiece piece in pieces)
        {
            if (joined.Count > 0 && GoesOn(joined[^1], piece, 0.0))
            {
                joined[^1] = joined[^1] with { To = piece.To };
            }
            else
            {
                joined.Add(piece);
            }
        }

        return RoundStart(joined);
    }

    private static BoundaryPiece[] RoundStart(List<BoundaryPiece> pieces)
    {
        for (int last = pieces.Count - 1; last > 0; last--)
        {
            int first = pieces.FindIndex(piece => piece.Stroke == pieces[last].Stroke);
            if (first < last && pieces[last].Stroke.IsClosed && GoesOn(pieces[last], pieces[first], pieces[last].Stroke.Length))
            {
                pieces[last] = pieces[last] with { To = pieces[first].To + pieces[last].Stroke.Length };
                pieces.RemoveAt(first);
                last--;
            }
        }

        return [.. pieces];
    }

    private static bool GoesOn(BoundaryPiece before, BoundaryPiece after, double lap) =>
        before.Stroke == after.Stroke && before.SheetOnLeft == after.SheetOnLeft && after.From + lap - before.To == 0.0;
}
