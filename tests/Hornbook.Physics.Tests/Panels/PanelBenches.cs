using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Tests.Panels;

/// <summary>Antennas and panels that the tests of the solver share.</summary>
internal static class PanelBenches
{
    internal const double Frequency = 10.525e9;

    internal static readonly Antenna LargeHorn = Antenna.At(new Horn(Guide, 94e-3, 79e-3, 66e-3, Brass), Frequency);
    internal static readonly Antenna Probe = Antenna.At(new OpenGuide(Guide, Brass), Frequency);
    internal static readonly Pose AtOrigin = new(Vector.Zero);

    private static RectangularGuide Guide => StandardGuides.Find("WR-90")!.Guide;

    private static Conductor Brass => Conductors.Find("brass")!;

    internal static PosedPanel Square(ISheet sheet, double side, Pose pose, double refinement = 1.0) =>
        Rectangle(sheet, side, side, pose, refinement);

    internal static PosedPanel Rectangle(ISheet sheet, double width, double height, Pose pose, double refinement = 1.0) =>
        new(PreparedPanel.At(new Panel(new RectangularSurface(width, height), sheet), Frequency, refinement), pose);

    internal static double LevelDb(Complex amplitude) => 2.0 * Decibels.FromRatio(amplitude.Magnitude);
}
