using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Physics.Detection;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations;

public sealed class EvaluationTests
{
    /// <summary>Far enough for every law of the far zone: 1 km is 1600 times 2D²/λ of the horn.</summary>
    private const double Far = 1000.0;

    private static BenchPlan FarAway { get; } = GoodBench.Plan with
    {
        Receiver = Moves.OnAxis(GoodBench.Plan.Source, GoodBench.Plan.Receiver, Far) with { Antenna = "open" },
    };

    public sealed class OfABeamWidth
    {
        [Theory]
        [InlineData(0.0)]
        [InlineData(90.0)]
        public void Far_away_the_source_shows_its_own_width_in_the_plane_of_turning(double rollDeg)
        {
            BenchPlan plan = FarAway with
            {
                Source = FarAway.Source with { Pose = FarAway.Source.Pose with { Roll = rollDeg * GoodBench.Degree } },
                Receiver = FarAway.Receiver with { Pose = FarAway.Receiver.Pose with { Roll = rollDeg * GoodBench.Degree } },
            };
            BeamWidthEvaluation evaluation = Of<BeamWidthEvaluation>(plan, GoodBench.BeamWidth with { Turned = BenchEnd.Source });
            // The spline over steps of one degree is good to 1e-4 of the width.
            Close.Relative(evaluation.OwnHalfPowerWidth!.Value, evaluation.HalfPowerWidth!.Value, 1e-4);
            Close.Absolute(0.0, evaluation.PeakAt, 1e-6);
        }

        [Fact]
        public void Close_by_the_beam_is_read_too_wide()
        {
            BeamWidthEvaluation evaluation = Of<BeamWidthEvaluation>(GoodBench.Plan, GoodBench.BeamWidth);
            Assert.Equal("horn", evaluation.Antenna);
            Assert.True(evaluation.HalfPowerWidth > evaluation.OwnHalfPowerWidth);
        }

        [Fact]
        public void An_antenna_held_askew_has_no_principal_plane_to_compare_with()
        {
            BenchPlan plan = GoodBench.Plan with
            {
                Receiver = GoodBench.Plan.Receiver with { Pose = GoodBench.Plan.Receiver.Pose with { Roll = 0.5 } },
            };
            BeamWidthEvaluation evaluation = Of<BeamWidthEvaluation>(plan, GoodBench.BeamWidth);
            Assert.Null(evaluation.OwnHalfPowerWidth);
            Assert.Null(evaluation.HandbookWidth);
        }
    }

    public sealed class OfAChangeOfAntennas
    {
        [Fact]
        public void Far_away_the_received_powers_differ_by_the_realised_gains()
        {
            AntennaChangeEvaluation evaluation = Of<AntennaChangeEvaluation>(FarAway, GoodBench.Gain with { Changed = BenchEnd.Source });
            Assert.All(evaluation.Steps, step => Close.Absolute(0.0, step.ErrorDb, 0.01));
            Assert.Equal(["horn", "small", "open"], evaluation.Steps.Select(s => s.Antenna));
            Assert.True(evaluation.Steps[2].GainDb - evaluation.Steps[2].RealisedGainDb > 0.1, "an open end reflects");
        }

        [Fact]
        public void Close_by_the_larger_antenna_gives_less_than_its_gain_promises() => Assert.True(
            Of<AntennaChangeEvaluation>(GoodBench.Plan, GoodBench.Gain).Steps[2].ErrorDb > 0.1);
    }

    public sealed class OfADistanceLaw
    {
        [Fact]
        public void Far_away_the_exponent_is_two_and_double_the_distance_leaves_a_quarter()
        {
            Prediction prediction = Predicting.Of(GoodBench.Plan, GoodBench.Distance with { From = Far, To = 2.0 * Far, Points = 11 });
            DistanceEvaluation evaluation = Assert.IsType<DistanceEvaluation>(prediction.Evaluation);
            // Inverse square; the apparent origin, some decimetres, bends it by about 1e-4 at 1 km, derived.
            Close.Absolute(2.0, evaluation.MouthExponent, 5e-4);
            Close.Absolute(2.0, evaluation.Exponent, 1e-3);
            Close.Relative(4.0, prediction.Curve.Points[0].Reading.Link / prediction.Curve.Points[^1].Reading.Link, 5e-4);
        }

        [Fact]
        public void On_the_table_the_law_seems_to_begin_behind_the_mouths()
        {
            DistanceEvaluation evaluation = Of<DistanceEvaluation>(GoodBench.Plan, GoodBench.Distance with { Points = 9 });
            Assert.InRange(evaluation.InverseSquareOrigin, 0.02, 0.26); // at most both horns' lengths, 2 × 130 mm, derived
            Assert.True(evaluation.MouthExponent < 2.0);
            Assert.Equal(9, evaluation.Textbook.Count);
            Close.Absolute(0.0, evaluation.Textbook[^1].InverseSquareErrorDb, 1e-9);
        }
    }

    public sealed class OfPolarisation
    {
        [Fact]
        public void The_law_of_Malus_holds_to_a_tenth_of_a_decibel_and_nothing_is_heard_across()
        {
            Prediction prediction = Predicting.Of(GoodBench.Polarisation with { Points = 10 });
            PolarisationEvaluation evaluation = Assert.IsType<PolarisationEvaluation>(prediction.Evaluation);
            // Malus's law; two horns of mirror symmetry keep it to 0.1 dB even on the table (common practice, no source).
            Close.Absolute(0.0, evaluation.LawErrorDb, 0.1);
            Close.Absolute(0.0, evaluation.StrongestAt, 1e-3);
            Close.Absolute(90.0 * GoodBench.Degree, evaluation.WeakestAt, 1e-9);
            Assert.True(evaluation.DepthDb > 60.0);
            Assert.Equal(ToneState.Drowned, prediction.Curve.Points[^1].Reading.Heard.State);
        }
    }

    private static T Of<T>(BenchPlan plan, Demonstration demonstration)
        where T : Evaluation => Assert.IsType<T>(Predicting.Of(plan, demonstration).Evaluation);
}
