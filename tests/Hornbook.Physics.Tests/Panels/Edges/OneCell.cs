using Hornbook.Physics.Panels.Edges;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Tests.Panels.Edges;

/// <summary>The fringe current that a single cell carries.</summary>
internal static class OneCell
{
    /// <summary>J at the width of the machine [A/m].</summary>
    public static ComplexVector Of(FringeCurrent fringe, EdgeLink link)
    {
        ComplexVector[] density = new ComplexVector[1];
        FringeKernel.Add(fringe, Columns(link), 0, density);
        return density[0];
    }

    /// <summary>J at a given width [A/m].</summary>
    public static ComplexVector Of<T>(FringeCurrent fringe, EdgeLink link)
        where T : unmanaged, ILanes<T>
    {
        ComplexVector[] density = new ComplexVector[1];
        FringeKernel<T>.Add(fringe, Columns(link), 0, density);
        return density[0];
    }

    private static EdgeColumns Columns(EdgeLink link) => new([link with { Cell = 0, Foot = 0 }], 1);
}
