using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Sheets;
using Complex = System.Numerics.Complex;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>What books have: a plane wave that travels as the source looks, with the source's field, and an endless sheet held as the panel is.</summary>
internal static class PlaneWave
{
    /// <summary>The power that passes with the field that arrives, over that without the sheet [dB]; −200 dB for metal.</summary>
    /// <param name="frequency">f [Hz].</param>
    /// <param name="source">Where the wave comes from and how its field lies.</param>
    /// <param name="panel">The sheet and how it is held.</param>
    internal static double PassedDb(double frequency, Pose source, BenchPanel panel) =>
        TextbookComparison.ErrorDb(Squared(Kept(frequency, source, panel).Passed), 1.0);

    /// <summary>The parts of the field along the sheet that pass and that return with the field that arrives, referred to the middle plane [-].</summary>
    /// <inheritdoc cref="PassedDb"/>
    internal static (Complex Passed, Complex Returned) Kept(double frequency, Pose source, BenchPanel panel)
    {
        Vector travel = source.Forward;
        Vector across = panel.Pose.Left, along = panel.Pose.Up;
        SheetFace face = Vector.Dot(travel, panel.Pose.Forward) >= 0.0 ? SheetFace.Back : SheetFace.Front;
        SheetMatrices sheet = panel.Panel.Sheet.At(frequency).Arriving(face, Vector.Dot(travel, across), Vector.Dot(travel, along));
        (double u, double v) = (Vector.Dot(source.Up, across), Vector.Dot(source.Up, along));
        return (Share(sheet.Transmission, u, v), Share(sheet.Reflection, u, v));
    }

    private static Complex Share(TangentialMatrix matrix, double u, double v)
    {
        (Complex first, Complex second) = matrix.Of(u, v);
        return ((first * u) + (second * v)) / ((u * u) + (v * v));
    }

    private static double Squared(Complex share) => (share.Real * share.Real) + (share.Imaginary * share.Imaginary);
}
