using System.Numerics;

namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>Two bodies seen from the plane in which the sources lie: along its normal, the first of its axes, no current of theirs flows. Immutable.</summary>
internal sealed class PlaneView
{
    // Of the largest component: what turning a current into the plane leaves of rounding.
    private const double Rounding = 1e-12;

    private readonly Vector[] _sources;
    private readonly Vector[] _observers;

    private PlaneView(Frame axes, Vector[] sources, Vector[] observers) => (Axes, _sources, _observers) = (axes, sources, observers);

    /// <summary>The normal of the plane, its longer side and its shorter one, right-handed, bench frame: those of a mouth are its own.</summary>
    internal Frame Axes { get; }

    /// <summary>The sources in these axes, in the order of their tree [m].</summary>
    internal ReadOnlySpan<Vector> Sources => _sources;

    /// <summary>The observers in these axes, in the order of their tree [m].</summary>
    internal ReadOnlySpan<Vector> Observers => _observers;

    /// <summary>The view; null where the sources lie in no plane.</summary>
    internal static PlaneView? Of(SampleTree sources, SampleTree observers)
    {
        if (sources.Root.Half.Z > 0.0)
        {
            return null;
        }

        // The axes of a tree are sorted by the sides of the body, whichever hand that makes.
        Frame tree = sources.Axes, axes = new(tree.Origin, tree.Up, tree.Forward, Vector.Cross(tree.Up, tree.Forward));
        return new PlaneView(axes, Seen(axes, sources.Points), Seen(axes, observers.Points));
    }

    /// <summary>Which components of currents in these axes can be other than zero.</summary>
    /// <param name="electric">J.</param>
    /// <param name="dual">jM/η.</param>
    internal static CurrentKind Kind(ReadOnlySpan<ComplexVector> electric, ReadOnlySpan<ComplexVector> dual)
    {
        Vector j = Largest(electric), m = Largest(dual);
        double least = Rounding * Math.Max(Math.Max(j.Y, j.Z), Math.Max(m.Y, m.Z));
        return Math.Max(j.X, m.X) > least ? CurrentKind.Any
            : Math.Max(j.Y, m.Z) <= least ? CurrentKind.Mouth
            : Math.Max(m.Y, m.Z) == 0.0 ? CurrentKind.ElectricPlane
            : CurrentKind.Plane;
    }

    private static Vector Largest(ReadOnlySpan<ComplexVector> currents)
    {
        double x = 0.0, y = 0.0, z = 0.0;
        foreach (ref readonly ComplexVector current in currents)
        {
            (x, y, z) = (Math.Max(x, Largest(current.X)), Math.Max(y, Largest(current.Y)), Math.Max(z, Largest(current.Z)));
        }

        return new Vector(x, y, z);
    }

    private static double Largest(Complex phasor) => Math.Max(Math.Abs(phasor.Real), Math.Abs(phasor.Imaginary));

    private static Vector[] Seen(Frame axes, ReadOnlySpan<Vector> points)
    {
        Vector[] seen = new Vector[points.Length];
        for (int i = 0; i < seen.Length; i++)
        {
            seen[i] = axes.Own(points[i]);
        }

        return seen;
    }
}
