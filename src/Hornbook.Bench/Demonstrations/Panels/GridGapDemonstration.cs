using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>A grid at 45° before a mirror turns the field: as the gap is opened, a crossed receiver hears it come and go.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Grid">Name of the grid, which as it lies has its strips along or across the source's field.</param>
/// <param name="Mirror">Name of the mirror.</param>
/// <param name="Incidence">Between the wave and the mirror's normal [rad].</param>
/// <param name="From">First gap [m]; &gt; 0.</param>
/// <param name="To">Last gap [m]; &gt; 0.</param>
/// <param name="Points">How many gaps; ≥ 3.</param>
public sealed record GridGapDemonstration(string Name, string Grid, string Mirror, double Incidence, double From, double To, int Points) : Demonstration(Name)
{
    private const double Crossed = 0.5 * Math.PI;

    /// <summary>From the mirror's middle to the receiver's mouth [m]; null for as far as it stands.</summary>
    public double? Distance { get; init; }

    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Gap;

    /// <inheritdoc/>
    public override string Act => "with the receiver crossed, the gap between a mirror and the grid before it is opened";

    private TurningMirror Parts => new(Grid, Mirror, Incidence, Distance);

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => TurningMirrorLesson.Of(plan);

    /// <inheritdoc/>
    public override IReadOnlyList<BenchPlan> Arrangements(BenchPlan plan, double reach) => Arranged.InProportion(plan, reach, Mirror);

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan) => [.. Moves.Evenly(From, To, Points).Select(gap => Parts.At(plan, gap, Crossed, gap))];

    internal override Evaluation Evaluate(Scene scene, Curve curve)
    {
        double wavelength = FreeSpace.Wavelength(scene.Plan.Frequency);
        double[] at = curve.Positions, powers = curve.Links;
        Array.Sort(at, powers);
        double? turned = At(Extremes.Maxima(at, powers)), straight = At(Extremes.Minima(at, powers)); // of powers: in decibels a null has a cusp
        double mirror = Parts.MirrorAlone(scene);
        double[] law = [.. curve.Positions.Select(gap => mirror * Math.Pow(Math.Sin(2.0 * Math.PI / wavelength * gap * Math.Cos(Incidence)), 2.0))];
        return new LawEvaluation(
        [
            new("turned across at", ComparedQuantity.Length, turned, Near(turned, 0.5, 1.0), "where the paths differ by half a wavelength: the field comes back turned by 90°"),
            new("not turned at", ComparedQuantity.Length, straight, Near(straight, 1.0, 1.0), "where they differ by a whole one"),
            new("circular at", ComparedQuantity.Length, 0.5 * (turned + straight), Near(0.5 * (turned + straight), 0.25, 0.5), "half-way between the two"),
            new("turned across", ComparedQuantity.Level, TextbookComparison.ErrorDb(curve.Strongest.Reading.Link, mirror), 0.0, "beside the mirror alone, fields parallel; books have a grid that loses nothing"),
        ])
        {
            Law = law,
            LawName = "sin² of half the phase between the two parts",
        };

        double? Near(double? gap, double difference, double repeats) => gap is { } at ? Parts.GapOf(wavelength, at, difference, repeats) : null;
    }

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation) =>
        $"As you open the gap, the crossed receiver's tone swings between {Hearing.At(curve, curve.Weakest)} "
        + $"and {Hearing.At(curve, curve.Strongest)}: {Hearing.Steps(curve)}.";

    private static double? At(double[] places) => places.Length > 0 ? places[0] : null;
}
