using Hornbook.Bench.Files.Format;
using Hornbook.Bench.Files.Quantities;
using Hornbook.Bench.Files.Syntax;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Outlines;

namespace Hornbook.Bench.Files.Binding;

/// <summary>Whether the outline of a panel is one, and whether what is cut out of it lies in it and leaves something.</summary>
/// <param name="problems">Takes what is found.</param>
/// <param name="frequency">Of the bench [Hz].</param>
internal sealed class OutlineChecks(ProblemList problems, double frequency)
{
    /// <summary>Checks a panel in which nothing else is wrong.</summary>
    internal void Check(BoundTable panel)
    {
        if (panel.Word == PanelFormat.Dish)
        {
            CheckDish(panel);
        }
        else
        {
            CheckFlat(panel);
        }
    }

    private void CheckDish(BoundTable dish)
    {
        if (dish.Number("hole_diameter", 0.0) >= dish.Number("diameter"))
        {
            Add(dish, "hole_diameter", "leaves nothing of the dish", $"the dish has a diameter of {ValueReader.Raw(dish.NodeOf("diameter"))}", "type less");
        }
    }

    private void CheckFlat(BoundTable panel)
    {
        if (Outline(panel) is not PanelSurface outline)
        {
            problems.Add(
                panel.NodeOf("corners").Place, "corners are no outline: sides touch or cross", "each side meets the next at its corner and no other side",
                "type the corners in the order in which a pencil would go round");
            return;
        }

        int before = problems.Found.Count;
        CheckSlits(panel, outline);
        CheckHoles(panel, outline);
        CheckRings(panel, outline);
        CheckBend(panel, outline);
        if (problems.Found.Count == before && !LeavesSomething(panel))
        {
            problems.Add(panel.Node.Place, "nothing is left of the panel between its openings", "openings leave some of it", "type smaller openings, or a larger panel");
        }
    }

    /// <summary>How far an outline reaches from its middle along a direction of its plane, either way [m].</summary>
    private static double Reach(PanelSurface outline, double y, double z) => outline.Loops.SelectMany(loop => loop).Max(point => Math.Abs((point.Y * y) + (point.Z * z)));

    private static PanelSurface? Outline(BoundTable panel)
    {
        try
        {
            return SurfaceComposer.Outlined(panel);
        }
        catch (ArgumentException) when (panel.Has("corners"))
        {
            return null;
        }
    }

    private bool LeavesSomething(BoundTable panel)
    {
        try
        {
            return SurfaceComposer.Compose(panel, frequency).Loops.Count > 0;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }

    private void CheckSlits(BoundTable panel, PanelSurface outline)
    {
        if (panel.Table("slits") is not BoundTable slits)
        {
            return;
        }

        int count = slits.Count("count", 1);
        double width = slits.Number("width"), spacing = slits.Number("spacing", 0.0);
        (double sin, double cos) = Math.SinCos(slits.Number("angle", 0.0));
        if (count > 1 && !slits.Has("spacing"))
        {
            problems.Add(slits.NodeOf("count").Place, $"count = {count}, but the slits have no spacing", "two slits and more have a spacing, from middle to middle", $"type spacing = \"{Millimetres(3.0 * width)}\"");
        }
        else if (count > 1 && spacing <= width)
        {
            Add(slits, "spacing", "makes one opening of the slits", $"the spacing, from middle to middle, is more than the width, \"{Millimetres(width)}\"", $"type more, like spacing = \"{Millimetres(3.0 * width)}\"");
        }
        else if ((spacing * (count - 1)) + width > 2.0 * Reach(outline, cos, sin))
        {
            Add(slits, count > 1 ? "spacing" : "width", "puts the slits beside the panel", $"the panel is {Millimetres(2.0 * Reach(outline, cos, sin))} wide there", "type less, or a larger panel");
        }
    }

    private void CheckHoles(BoundTable panel, PanelSurface outline)
    {
        foreach (BoundItem item in panel.List("holes"))
        {
            BoundTable hole = (BoundTable)item.Value;
            double size = hole.Number("diameter", Math.Max(hole.Number("width", 0.0), hole.Number("height", 0.0)));
            Vector middle = new(0.0, hole.Number("y", 0.0), hole.Number("z", 0.0));
            double aside = Math.Abs(middle.Y) - Reach(outline, 1.0, 0.0), above = Math.Abs(middle.Z) - Reach(outline, 0.0, 1.0);
            if (Math.Max(aside, above) >= 0.5 * size)
            {
                string key = aside > above ? "y" : "z";
                Add(hole, key, "puts the hole beside the panel", $"the panel reaches {Millimetres(Reach(outline, key == "y" ? 1.0 : 0.0, key == "z" ? 1.0 : 0.0))} from its middle", "type a place on the panel");
            }
        }
    }

    private void CheckRings(BoundTable panel, PanelSurface outline)
    {
        double reach = outline.Loops.SelectMany(loop => loop).Max(point => point.Length);
        foreach (BoundItem item in panel.List("rings"))
        {
            BoundTable ring = (BoundTable)item.Value;
            if (ring.Number("outer_diameter") <= ring.Number("inner_diameter"))
            {
                Add(ring, "outer_diameter", "is no more than the inner one", "the outer circle is the larger one", $"type more than {ValueReader.Raw(ring.NodeOf("inner_diameter"))}");
            }
            else if (0.5 * ring.Number("inner_diameter") >= reach)
            {
                Add(ring, "inner_diameter", "puts the ring beside the panel", $"the panel reaches {Millimetres(reach)} from its middle", "type less, or a larger panel");
            }
        }
    }

    private void CheckBend(BoundTable panel, PanelSurface outline)
    {
        if (panel.Word != PanelFormat.BentPlate)
        {
            return;
        }

        double reach = SurfaceComposer.Axis(panel) == BendAxis.Z ? Reach(outline, 1.0, 0.0) : Reach(outline, 0.0, 1.0);
        if (reach > 0.5 * Math.PI * panel.Number("radius"))
        {
            string smallest = Millimetres(Math.Ceiling(2e3 * reach / Math.PI) / 1e3);
            Add(panel, "radius", "bends the plate too far", "it is bent by a quarter turn to either side at most", $"type radius = \"{smallest}\" or more");
        }
    }

    private static string Millimetres(double length) => QuantityText.Write(length, Quantity.Length.FindUnit("mm")!, Quantity.Length);

    private void Add(BoundTable table, string key, string what, string fits, string type)
    {
        Node node = table.Has(key) ? table.NodeOf(key) : table.Node;
        problems.Add(node.Place, $"{key} = {ValueReader.Raw(node)} {what}", fits, type);
    }
}
