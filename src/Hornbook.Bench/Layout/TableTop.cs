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
    /// <summary>What the top is made of; null where it is left out of the computation.</summary>
    public ISheet? Sheet { get; init; }

    /// <summary>The table top as a panel, front face up, where it has a sheet.</summary>
    public Panel? Panel => Sheet is null ? null : new Panel(new RectangularSurface(Width, Length), Sheet);

    /// <summary>Where that panel stands: its own z runs against x, so that its front face looks up.</summary>
    public Pose Pose => new(new Vector(0.5 * Length, 0.0, -0.5 * (Sheet?.Thickness ?? 0.0)), tilt: 0.5 * Math.PI);
}
