using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Complex = System.Numerics.Complex;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>A grid at 45° before a mirror sends back a circular wave: however the receiver is rolled, the tone stays.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Grid">Name of the grid, which as it lies has its strips along or across the source's field.</param>
/// <param name="Mirror">Name of the mirror.</param>
/// <param name="Gap">Grid to mirror [m]; &gt; 0.</param>
/// <param name="Incidence">Between the wave and the mirror's normal [rad].</param>
/// <param name="From">First roll of the receiver off its present one [rad].</param>
/// <param name="To">Last roll [rad].</param>
/// <param name="Points">How many angles; ≥ 3.</param>
public sealed record CircularPolarisationDemonstration(
    string Name, string Grid, string Mirror, double Gap, double Incidence, double From, double To, int Points) : Demonstration(Name)
{
    // Two parts that differ by a quarter of a wavelength are circular; so they are at three quarters.
    private const double QuarterWave = 0.25;
    private const double HalfWave = 0.5;

    /// <summary>From the mirror's middle to the receiver's mouth [m]; null for as far as it stands.</summary>
    public double? Distance { get; init; }

    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Roll;

    /// <inheritdoc/>
    public override string Act => "the receiver is rolled in what a mirror with a grid before it sends back";

    private TurningMirror Parts => new(Grid, Mirror, Incidence, Distance);

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => TurningMirrorLesson.Of(plan);

    /// <inheritdoc/>
    public override IReadOnlyList<BenchPlan> Arrangements(BenchPlan plan, double reach) => Arranged.InProportion(plan, reach, Mirror);

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan) => [.. Moves.Evenly(From, To, Points).Select(roll => Parts.At(plan, Gap, roll, roll))];

    internal override Evaluation Evaluate(Scene scene, Curve curve)
    {
        MalusLaw ellipse = MalusLaw.Fit(curve.Positions, curve.Links);
        double wavelength = FreeSpace.Wavelength(scene.Plan.Frequency);
        double mirror = Parts.MirrorAlone(scene);
        return new LawEvaluation(
        [
            new("axial ratio", ComparedQuantity.Level, TextbookComparison.ErrorDb(ellipse.Strongest, ellipse.Weakest), AxialRatioDb(Parts.Returned(scene.Plan.Frequency, curve.Points[0].Setting)),
                "strongest over weakest as the receiver is rolled; 0 dB is a circle. Books: an endless grid and a plane wave"),
            new("gap", ComparedQuantity.Length, Gap, Parts.GapOf(wavelength, Gap, QuarterWave, HalfWave), "where the paths differ by a quarter of a wavelength, or three, or five"),
            new("strongest", ComparedQuantity.Level, TextbookComparison.ErrorDb(ellipse.Strongest, mirror), Decibels.FromRatio(0.5), "beside the mirror alone, fields parallel; of a circle half is heard"),
            new("longest at", ComparedQuantity.Angle, ellipse.StrongestAt, null, "roll of the long axis of the ellipse, off the receiver's present roll"),
        ]);
    }

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation) =>
        $"However you roll the receiver, the tone stays between {Hearing.At(curve, curve.Weakest)} and {Hearing.At(curve, curve.Strongest)}: "
        + $"{Hearing.Steps(curve)}. With the grid away there is a roll at which nothing is left of the wave.";

    // Long over short axis of the ellipse of two complex components: (S + |a² + b²|)/(S − |a² + b²|) in power, S = |a|² + |b|² [BornWolf1999] § 1.4.
    private static double AxialRatioDb((Complex A, Complex B) field)
    {
        double sum = Math.Pow(field.A.Magnitude, 2.0) + Math.Pow(field.B.Magnitude, 2.0);
        double straight = ((field.A * field.A) + (field.B * field.B)).Magnitude;
        return TextbookComparison.ErrorDb(sum + straight, sum - straight);
    }
}
