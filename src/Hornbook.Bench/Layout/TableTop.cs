namespace Hornbook.Bench.Layout;

/// <summary>The table: x runs along it from the left edge at 0, y across it with 0 in the middle, z = 0 is its top.</summary>
/// <param name="Length">Along x [m].</param>
/// <param name="Width">Across, along y [m].</param>
public sealed record TableTop(double Length, double Width);
