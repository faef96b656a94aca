using System.Numerics;
using CsCheck;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation;

public static class ReactionTests
{
    public sealed class Between
    {
        private static readonly Vector Apart = new(0.5, 0.1, -0.1);

        private static readonly Gen<Pose> AnyPose = Gen.Select(
            RandomCurrents.Place(Vector.Zero, 0.1), Gen.Double[-3.0, 3.0], Gen.Double[-1.5, 1.5], Gen.Double[-3.0, 3.0], (p, turn, tilt, roll) => new Pose(p, turn, tilt, roll));

        [Fact]
        public void Swapping_source_and_receiver_changes_nothing() =>
            Gen.Select(RandomCurrents.InCube(Vector.Zero, 0.1, 70), RandomCurrents.InCube(Apart, 0.1, 70), RandomCurrents.Wavenumber).Sample((a, b, k) =>
            {
                Complex there = Reaction.Between(a, b, k);
                Close.Absolute(0.0, Complex.Abs(Reaction.Between(b, a, k) - there) / Scale(a, b, k), 1e-13);
            });

        [Fact]
        public void Is_the_sum_over_the_scalar_field() =>
            Gen.Select(RandomCurrents.InCube(Vector.Zero, 0.1, 20), RandomCurrents.InCube(Apart, 0.1, 150), RandomCurrents.Wavenumber).Sample((a, b, k) =>
            {
                Complex sum = Complex.Zero;
                for (int i = 0; i < b.Count; i++)
                {
                    FieldSample f = ScalarField.At(a, k, b.Points[i]);
                    sum += ComplexVector.Dot(f.Electric, b.Electric[i]) - ComplexVector.Dot(f.Magnetic, b.Magnetic[i]);
                }

                Close.Absolute(0.0, Complex.Abs(Reaction.Between(a, b, k) - sum) / Scale(a, b, k), 1e-12);
            },
            iter: 30);

        [Fact]
        public void Holding_currents_in_poses_is_the_same_as_posing_them_first() =>
            Gen.Select(RandomCurrents.InCube(Vector.Zero, 0.1, 20), AnyPose, RandomCurrents.InCube(Vector.Zero, 0.1, 90), AnyPose).Sample((a, poseA, b, poseB) =>
            {
                const double K = 220.0;
                poseB = poseB with { Position = poseB.Position + new Vector(1.0, 0.0, 0.0) };
                Complex posed = Reaction.Between(a.Posed(poseA), b.Posed(poseB), K);
                Close.Absolute(0.0, Complex.Abs(Reaction.Between(a, poseA, b, poseB, K) - posed) / Scale(a.Posed(poseA), b.Posed(poseB), K), 1e-12);
            });

        [Fact]
        public void A_quarter_of_it_is_the_link_of_Friis_far_away()
        {
            // [Friis1946] with D = 3/2 of a Hertzian dipole at its equator ([Balanis2016] ch. 4); derived: the near terms are (kr)⁻² = 2e-9.
            const double K = 220.0, Distance = 100.0, Directivity = 1.5;
            double wavelength = 2.0 * Math.PI / K;
            CurrentSamples dipole = RandomCurrents.Element(new ComplexVector(0, 0, 1), default);
            dipole = dipole.Scaled(1.0 / Math.Sqrt(FarField.RadiatedPower(dipole, K)));
            Complex link = 0.25 * Reaction.Between(dipole, default, dipole, new Pose(new Vector(0.0, Distance, 0.0)), K);
            Close.Relative(Directivity * wavelength / (4.0 * Math.PI * Distance), link.Magnitude, 4e-9);
        }

        [Fact]
        public void Crossed_dipoles_do_not_hear_each_other()
        {
            CurrentSamples dipole = RandomCurrents.Element(new ComplexVector(0, 0, 1), default);
            Complex crossed = Reaction.Between(dipole, default, dipole, new Pose(new Vector(0.3, 0.0, 0.0), roll: Math.PI / 2), 220.0);
            Complex parallel = Reaction.Between(dipole, default, dipole, new Pose(new Vector(0.3, 0.0, 0.0)), 220.0);
            Close.Absolute(0.0, crossed.Magnitude / parallel.Magnitude, 1e-15);
        }

        [Fact]
        public void Allocates_nothing()
        {
            CurrentSamples a = RandomCurrents.InCube(Vector.Zero, 0.1, 70).Single();
            Reaction.Between(a, default, a, new Pose(Apart), 220.0);
            long before = GC.GetAllocatedBytesForCurrentThread();
            Reaction.Between(a, default, a, new Pose(Apart), 220.0);
            Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        // Random reactions cancel in part; rounding is measured against the sum of magnitudes.
        private static double Scale(CurrentSamples a, CurrentSamples b, double k)
        {
            double sum = 0.0;
            for (int i = 0; i < b.Count; i++)
            {
                FieldSample f = ScalarField.At(a, k, b.Points[i]);
                sum += Math.Sqrt(f.Electric.SquaredMagnitude * b.Electric[i].SquaredMagnitude) + Math.Sqrt(f.Magnetic.SquaredMagnitude * b.Magnetic[i].SquaredMagnitude);
            }

            return sum;
        }
    }
}
