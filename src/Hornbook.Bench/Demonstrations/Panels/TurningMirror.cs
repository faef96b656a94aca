using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Sheets;
using Complex = System.Numerics.Complex;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>A mirror with a grid in front of it, the strips at 45° to the source's field: the part of the field along the strips turns back at the grid, the other at the mirror.</summary>
/// <param name="Grid">Name of the grid, which as it lies has its strips along or across the source's field.</param>
/// <param name="Mirror">Name of the mirror.</param>
/// <param name="Incidence">Between the wave and the mirror's normal [rad].</param>
/// <param name="Distance">From the mirror's middle to the receiver's mouth [m]; null for as far as it stands.</param>
internal sealed record TurningMirror(string Grid, string Mirror, double Incidence, double? Distance)
{
    private const double Slant = 0.25 * Math.PI;

    /// <summary>What is set for a gap and a roll of the receiver off its present one.</summary>
    /// <param name="plan">The bench.</param>
    /// <param name="gap">Grid to mirror [m]; null for the mirror without the grid.</param>
    /// <param name="roll">[rad].</param>
    /// <param name="at">The abscissa, SI.</param>
    internal Setting At(BenchPlan plan, double? gap, double roll, double at)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Vector source = plan.Source.Pose.Position;
        Pose mirror = MirrorWay.Panel(plan.Panels.Named(Mirror).Pose, source, Incidence);
        Pose receiver = MirrorWay.Receiver(Arranged.AtDistance(plan.Receiver.Pose, mirror.Position, Distance), mirror, source, Incidence).Rolled(roll);
        IReadOnlyList<BenchPanel> standing = plan.Panels.PutIn(Mirror, _ => mirror);
        IReadOnlyList<BenchPanel> panels = gap is { } wide ? standing.PutIn(Grid, pose => Before(mirror, pose, wide)) : standing.Without(Grid);
        return new Setting(at, string.Empty, plan.Source, plan.Receiver with { Pose = receiver }, panels);
    }

    /// <summary>The link by way of the mirror with the grid away, fields parallel [-].</summary>
    internal double MirrorAlone(Scene scene)
    {
        Setting plain = At(scene.Plan, null, 0.0, 0.0);
        return scene.Read(plain.Source, plain.Receiver, plain.Panels).Link;
    }

    /// <summary>The gap nearest to a given one at which the two parts differ by so much of a wavelength, 2 d cos θ [m].</summary>
    /// <param name="wavelength">[m].</param>
    /// <param name="near">The given one [m].</param>
    /// <param name="difference">Of the paths, in wavelengths [-].</param>
    /// <param name="repeats">After how much more of a difference it is the same again, in wavelengths [-].</param>
    internal double GapOf(double wavelength, double near, double difference, double repeats)
    {
        double perDifference = wavelength / (2.0 * Math.Cos(Incidence));
        double turns = Math.Max(0.0, Math.Round(((near / perDifference) - difference) / repeats));
        return (difference + (turns * repeats)) * perDifference;
    }

    /// <summary>What an endless grid before an endless mirror makes of a plane wave: the returned field across and up, as the receiver sees it [-].</summary>
    /// <param name="frequency">f [Hz].</param>
    /// <param name="setting">Where things stand; the gap is in it.</param>
    internal (Complex Across, Complex Up) Returned(double frequency, Setting setting)
    {
        Pose source = setting.Source.Pose, grid = setting.Panels.Named(Grid).Pose, mirror = setting.Panels.Named(Mirror).Pose;
        double gap = Vector.Dot(grid.Position - mirror.Position, mirror.Forward);
        double cosine = -Vector.Dot(source.Forward, mirror.Forward);
        SheetMatrices sheet = setting.Panels.Named(Grid).Panel.Sheet.At(frequency)
            .Arriving(SheetFace.Front, Vector.Dot(source.Forward, grid.Left), Vector.Dot(source.Forward, grid.Up));
        Complex back = -Complex.Exp(new Complex(0.0, -2.0 * FreeSpace.Wavenumber(frequency) * gap * cosine));
        TangentialMatrix whole = sheet.Reflection + (sheet.Transmission * ((TangentialMatrix.Identity + (sheet.Reflection * -back)).Inverse() * back) * sheet.Transmission);
        (Complex left, Complex up) = whole.Of(Vector.Dot(source.Up, grid.Left), Vector.Dot(source.Up, grid.Up));
        Vector level = (mirror with { Roll = 0.0 }).Left;
        Complex across = (left * Vector.Dot(grid.Left, level)) + (up * Vector.Dot(grid.Up, level));
        return (across / cosine, (left * grid.Left.Z) + (up * grid.Up.Z));
    }

    private static Pose Before(Pose mirror, Pose grid, double gap) => mirror.Shifted(new Vector(gap, 0.0, 0.0)) with { Roll = grid.Roll + Slant };
}
