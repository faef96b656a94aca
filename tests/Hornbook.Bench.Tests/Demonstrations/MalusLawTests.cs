using CsCheck;
using Hornbook.Bench.Demonstrations;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations;

public sealed class MalusLawTests
{
    private static readonly double[] Rolls = [.. Enumerable.Range(0, 19).Select(i => i * 5.0 * GoodBench.Degree)];

    [Fact]
    public void Finds_the_roll_and_the_strength_that_made_the_powers() =>
        Gen.Select(Gen.Double[-1.5, 1.5], Gen.Double[1e-6, 1.0]).Sample((at, strength) =>
        {
            double[] powers = [.. Rolls.Select(roll => strength * Math.Pow(Math.Cos(roll - at), 2.0))];
            MalusLaw law = MalusLaw.Fit(Rolls, powers);
            Close.Absolute(at, law.StrongestAt, 1e-9);
            Close.Relative(strength, law.Strongest, 1e-9);
            Close.Absolute(0.0, law.LargestErrorDb(Rolls, powers), 1e-6);
        });

    [Theory]
    // Malus: cos² of 30°, 45° and 60° is ¾, ½ and ¼, derived.
    [InlineData(30.0, 0.75)]
    [InlineData(45.0, 0.5)]
    [InlineData(60.0, 0.25)]
    public void Promises_cosine_squared(double rollDeg, double share) =>
        Close.Relative(share, new MalusLaw(0.0, 1.0).Share(rollDeg * GoodBench.Degree), 1e-12);

    [Fact]
    public void What_never_vanishes_is_the_short_axis_of_an_ellipse()
    {
        // derived: an ellipse of axes 3 and 1, its long one at 20°, gives 9 cos² + 1 sin² of the roll from there.
        double[] powers = [.. Rolls.Select(roll => 1.0 + (8.0 * Math.Pow(Math.Cos(roll - (20.0 * GoodBench.Degree)), 2.0)))];
        MalusLaw law = MalusLaw.Fit(Rolls, powers);
        Close.Relative(9.0, law.Strongest, 1e-9);
        Close.Relative(1.0, law.Weakest, 1e-9);
        Close.Relative(20.0 * GoodBench.Degree, law.StrongestAt, 1e-9);
    }

    [Fact]
    public void Sees_a_departure_above_the_null_and_leaves_the_null_out()
    {
        double[] powers = [.. Rolls.Select(roll => Math.Pow(Math.Cos(roll), 2.0) + (Math.Cos(roll) < 0.09 ? 0.01 : 0.0))];
        MalusLaw law = new(0.0, 1.0);
        Close.Absolute(0.0, law.LargestErrorDb(Rolls, powers), 1e-9);
        // A tenth too much at 60° is 10 log10 1.1 = 0.4139 dB, derived.
        powers[12] *= 1.1;
        Close.Absolute(0.4139, law.LargestErrorDb(Rolls, powers), 1e-4);
    }
}
