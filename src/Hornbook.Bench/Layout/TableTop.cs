using Hornbook.Physics;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Bench.Layout;

/// <summary>The table: x runs along it from the left edge at 0, y across it with 0 in the middle, z = 0 is its top.</summary>
/// <param name="Length">Along x [m].</param>
/// <param name="Width">Across, along y [m].</param>
public sealed record TableTop(double Length, double Width)
{
    /// <summary>The table top as a panel with its front face up; null where it is left out of the computation.</summary>
    public Panel? Panel { get; init; }

    /// <summary>Where that panel stands: its own z runs against x, and its upper face is z = 0.</summary>
    public Pose Pose => new(new Vector(0.5 * Length, 0.0, -0.5 * (Panel?.Sheet.Thickness ?? 0.0)), tilt: 0.5 * Math.PI);

    /// <summary>The same table with a top of this make-up.</summary>
    public TableTop Of(ISheet sheet) => this with { Panel = new Panel(new RectangularSurface(Width, Length), sheet) };
}
