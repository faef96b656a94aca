using Hornbook.Physics.Panels.Outlines;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Outlines;

/// <summary>What holds for the cells and feet of every surface.</summary>
internal static class SurfaceLaws
{
    /// <summary>Normal and across are unit vectors at right angles.</summary>
    internal static void HaveRightFrames(IReadOnlyList<Cell> cells) => Assert.All(cells, cell =>
    {
        Close.Relative(1.0, cell.Normal.Length, 1e-12);
        Close.Relative(1.0, cell.Across.Length, 1e-12);
        Close.Absolute(0.0, Vector.Dot(cell.Normal, cell.Across), 1e-12);
        Assert.True(cell.Normal.X >= 0.0 && cell.Area > 0.0);
    });

    /// <summary>Each foot has a right frame, and what lies a little inward from it has its foot there, at that distance.</summary>
    internal static void HaveRightFeet(PanelSurface surface, double spacing)
    {
        // A micrometre leaves a surface that is bent with a radius of 50 mm or more by 1e-11 m.
        const double Step = 1e-6;
        foreach (Rim rim in surface.Rims)
        {
            foreach (RimFoot foot in surface.Cells(spacing).Select(cell => rim.Foot(cell.Centre)).OfType<RimFoot>())
            {
                Close.Relative(1.0, foot.Inward.Length, 1e-12);
                Close.Relative(1.0, foot.Normal.Length, 1e-12);
                Close.Absolute(0.0, Vector.Dot(foot.Inward, foot.Normal), 1e-12);
                RimFoot near = Assert.NotNull(rim.Foot(foot.Place + (foot.Inward * Step)));
                Close.Absolute(0.0, (near.Place - foot.Place).Length, 1e-10);
                // 1e-4 of the step: its bend, and rounding.
                Close.Absolute(Step, near.Distance, 1e-4 * Step);
                Assert.Null(rim.Foot(foot.Place - (foot.Inward * Step)));
            }
        }
    }
}
