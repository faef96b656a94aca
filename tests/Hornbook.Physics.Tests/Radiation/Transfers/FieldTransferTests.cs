using System.Numerics;
using CsCheck;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Transfers;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation.Transfers;

/// <summary>The transfer against the direct sum, which is tested for itself.</summary>
public static class FieldTransferTests
{
    // Common practice, no source: 10.5 GHz, about the middle of the band of the bench.
    private const double Wavenumber = 220.0;

    private static FieldSample[] Direct(CurrentSamples currents, double wavenumber, Vector[] points)
    {
        FieldSample[] fields = new FieldSample[points.Length];
        RadiatedField.Evaluate(currents, wavenumber, points, fields);
        return fields;
    }

    private static FieldSample[] There(FieldTransfer transfer, CurrentSamples currents, Body to)
    {
        FieldSample[] fields = new FieldSample[to.Points.Length];
        transfer.Add(currents, fields);
        return fields;
    }

    private static void AgreeBothWays(Body a, Body b, CurrentSamples onA, CurrentSamples onB, double wavenumber, double tolerance)
    {
        FieldTransfer there = FieldTransfer.Between(a.Tree, b.Tree, wavenumber, tolerance), back = FieldTransfer.Between(b.Tree, a.Tree, wavenumber, tolerance);
        Close.Absolute(0.0, FieldErrors.Largest(Direct(onA, wavenumber, b.Points), There(there, onA, b)), tolerance);
        Close.Absolute(0.0, FieldErrors.Largest(Direct(onB, wavenumber, a.Points), There(back, onB, a)), tolerance);
    }

    private static void AgreeBothWays(Gen<Body> first, Gen<Body> second, Gen<double> wavenumber, double tolerance, int iterations) =>
        Gen.Select(first, second, wavenumber)
            .SelectMany((a, b, k) => Gen.Select(RandomCurrents.At(a.Points), RandomCurrents.At(b.Points), (onA, onB) => (a, b, k, onA, onB)))
            .Sample(c => AgreeBothWays(c.a, c.b, c.onA, c.onB, c.k, tolerance), iter: iterations);

    private static readonly Gen<Vector> Around =
        Gen.Select(Gen.Double[0.12, 0.8], Body.Angle, Gen.Double[-1.0, 1.0], (r, turn, z) =>
            new Vector(r * Math.Cos(turn), r * Math.Sin(turn), 0.2 * z));

    public sealed class Add
    {
        [Theory]
        [InlineData(1e-3)]
        [InlineData(1e-4)]
        [InlineData(1e-6)]
        public void Agrees_with_the_direct_sum_between_panels(double tolerance) =>
            AgreeBothWays(Body.Panel(Vector.Zero, 0.15), Around.SelectMany(p => Body.Panel(p, 0.15)), RandomCurrents.Wavenumber, tolerance, 40);

        // A part of a body sends its share of the whole body's currents.
        [Fact]
        public void Takes_the_currents_of_a_part_from_those_of_the_whole() =>
            Body.Panel(Vector.Zero, 0.15).SelectMany(whole => RandomCurrents.At(whole.Points).Select(currents => (Whole: whole, Currents: currents))).Sample(
                sent =>
                {
                    int[] chosen = [.. Enumerable.Range(0, sent.Whole.Points.Length).Where(i => i % 3 != 1)];
                    Body to = new([.. sent.Whole.Points.Select(p => p + new Vector(0.2, 0.1, 0.3))], sent.Whole.Axes);
                    SampleTree part = SampleTree.Of(Array.ConvertAll(chosen, i => sent.Whole.Points[i]), sent.Whole.Axes).Numbered(chosen, sent.Whole.Points.Length);
                    FieldSample[] expected = Direct(sent.Currents.Chosen(chosen), Wavenumber, to.Points);
                    Close.Absolute(0.0, FieldErrors.Largest(expected, There(FieldTransfer.Between(part, to.Tree, Wavenumber), sent.Currents, to)), FieldTransfer.UsualTolerance);
                },
                iter: 10);

        [Fact]
        public void Where_the_magnetic_field_is_enough_it_is_the_same() =>
            Gen.Select(Body.Panel(Vector.Zero, 0.15), Around.SelectMany(p => Body.Panel(p, 0.15))).SelectMany((a, b) => RandomCurrents.At(a.Points).Select(on => (a, b, on))).Sample(
                c =>
                {
                    FieldSample[] all = There(FieldTransfer.Between(c.a.Tree, c.b.Tree, Wavenumber), c.on, c.b);
                    FieldSample[] magnetic = There(FieldTransfer.Between(c.a.Tree, c.b.Tree, Wavenumber, part: FieldPart.Magnetic), c.on, c.b);
                    Assert.All(all.Zip(magnetic), field => Assert.Equal(field.First.Magnetic, field.Second.Magnetic));
                },
                iter: 10);

        [Fact]
        public void Agrees_with_the_direct_sum_between_clouds_without_order() =>
            AgreeBothWays(
                Body.Cloud(Vector.Zero, 0.1, 300), Around.SelectMany(p => Body.Cloud(p, 0.15, 400)), RandomCurrents.Wavenumber, FieldTransfer.UsualTolerance, 40);

        [Fact]
        public void Agrees_with_the_direct_sum_above_a_table() =>
            // From panels that nearly stand on it to far beyond its end, from where it is seen at grazing angles.
            AgreeBothWays(
                Gen.Const(Body.Table(0.5, 0.3)),
                Gen.Select(Gen.Double[0.0, 1.5], Gen.Double[0.0, 0.1]).SelectMany(p => Body.Panel(new Vector(p.Item1, 0.05, 0.085 + p.Item2), 0.13)),
                Gen.Const(Wavenumber), FieldTransfer.UsualTolerance, 15);

        [Fact]
        public void Agrees_with_the_direct_sum_for_currents_that_a_wave_drives()
        {
            // A wave at the panel drives currents that add up in one direction. What goes elsewhere is weak, and is held to the largest field only.
            Body panel = Body.Sheet(0.15, 0.15, new Pose(new Vector(0.0, 0.0, 0.2), turn: 0.4)), table = Body.Table(1.0, 0.4);
            CurrentSamples source = new([new Vector(-0.8, 0.1, 0.25)], [new ComplexVector(0, 0, 1)], [default]);
            FieldSample[] wave = Direct(source, Wavenumber, panel.Points);
            CurrentSamples metal = new(panel.Points, [.. wave.Select(w => ComplexVector.Cross(panel.Axes.Forward, w.Magnetic))], new ComplexVector[wave.Length]);
            FieldTransfer transfer = FieldTransfer.Between(panel.Tree, table.Tree, Wavenumber);
            Close.Absolute(0.0, FieldErrors.Largest(Direct(metal, Wavenumber, table.Points), There(transfer, metal, table)), FieldTransfer.UsualTolerance);
        }

        [Fact]
        public void Is_the_same_with_any_width_of_registers()
        {
            Body a = Body.Sheet(0.12, 0.1, new Pose(new Vector(0.0, 0.0, 0.1), turn: 0.3)), b = Body.Table(0.6, 0.3);
            CurrentSamples currents = RandomCurrents.At(a.Points).Single();
            (BoxPair[] pairs, double cost) = TransferPlan.Of(a.Tree, b.Tree, Wavenumber, 9.0);
            OneWay way = new(a.Tree, b.Tree, pairs, Wavenumber, cost);
            FieldSample[] narrow = new FieldSample[b.Points.Length], middle = new FieldSample[b.Points.Length], wide = new FieldSample[b.Points.Length];
            way.Add<Lanes128, SingleLanes128>(currents, narrow);
            way.Add<Lanes256, SingleLanes256>(currents, middle);
            way.Add<Lanes512, SingleLanes512>(currents, wide);
            Close.Absolute(0.0, FieldErrors.Largest(narrow, middle), 1e-12); // rounding
            Close.Absolute(0.0, FieldErrors.Largest(narrow, wide), 1e-12);
        }

        [Fact]
        public void Is_the_same_to_the_last_bit_each_time_on_however_many_cores()
        {
            Body a = Body.Sheet(0.12, 0.1, new Pose(new Vector(0.0, 0.0, 0.1), turn: 0.3)), b = Body.Table(0.6, 0.3);
            CurrentSamples currents = RandomCurrents.At(a.Points).Single();
            (BoxPair[] pairs, _) = TransferPlan.Of(a.Tree, b.Tree, Wavenumber, 9.0);
            FieldSample[] alone = new FieldSample[b.Points.Length], shared = new FieldSample[b.Points.Length];
            new OneWay(a.Tree, b.Tree, pairs, Wavenumber, cost: 0.0).Add(currents, alone);
            new OneWay(a.Tree, b.Tree, pairs, Wavenumber, cost: 1e9).Add(currents, shared);
            Assert.Equal(alone, shared);
        }

        [Fact]
        public void Adds_to_what_is_there()
        {
            Body a = Body.Sheet(0.1, 0.1, default), b = Body.Sheet(0.1, 0.1, new Pose(new Vector(0.4, 0.0, 0.0)));
            FieldTransfer transfer = FieldTransfer.Between(a.Tree, b.Tree, Wavenumber);
            CurrentSamples currents = RandomCurrents.At(a.Points).Single();
            FieldSample[] once = There(transfer, currents, b), twice = There(transfer, currents, b);
            transfer.Add(currents, twice);
            Close.Absolute(0.0, FieldErrors.Largest([.. once.Select(f => new FieldSample(f.Electric * 2.0, f.Magnetic * 2.0))], twice), 1e-15);
        }

        [Fact]
        public void In_floats_loses_less_than_the_tolerance_for_which_they_are_used()
        {
            // From end to end of a long table, where phases are largest: some 700 radians.
            Body a = Body.Sheet(0.12, 0.1, new Pose(new Vector(1.5, 0.0, 0.1), turn: 0.3)), b = Body.Table(3.0, 0.3);
            CurrentSamples currents = RandomCurrents.At(a.Points).Single();
            (BoxPair[] pairs, double cost) = TransferPlan.Of(a.Tree, b.Tree, Wavenumber, 9.0);
            FieldSample[] doubles = new FieldSample[b.Points.Length], floats = new FieldSample[b.Points.Length];
            new OneWay(a.Tree, b.Tree, pairs, Wavenumber, cost).Add(currents, doubles);
            new OneWay(a.Tree, b.Tree, pairs, Wavenumber, cost, inFloats: true).Add(currents, floats);
            // derived: floats have 24 bits, 6e-8, and phases of 700 radians are rounded some times: 1e-4 if all rounded alike. Seen below a fifth of that, with registers of any width; they are used from 1e-4 on.
            Assert.InRange(FieldErrors.Largest(doubles, floats), 1e-9, 2e-5);
        }

        [Fact]
        public void Refuses_currents_of_another_body()
        {
            Body a = Body.Sheet(0.03, 0.03, default), b = Body.Sheet(0.03, 0.03, new Pose(new Vector(0.4, 0.0, 0.0)));
            FieldTransfer transfer = FieldTransfer.Between(a.Tree, b.Tree, Wavenumber);
            Assert.Throws<ArgumentException>(() => There(transfer, RandomCurrents.Element(default, default), b));
        }
    }

    public sealed class Between
    {
        [Fact]
        public void Makes_a_plan_whose_two_ways_are_reciprocal_to_rounding() =>
            // Eq. radiation (6): ⟨a,b⟩ = ⟨b,a⟩ is a law of the exact field; here it also holds for what interpolation leaves, as the two ways are transposed.
            Gen.Select(Body.Panel(Vector.Zero, 0.15), Around.SelectMany(p => Body.Panel(p, 0.15)))
                .SelectMany((a, b) => Gen.Select(RandomCurrents.At(a.Points), RandomCurrents.At(b.Points), (onA, onB) => (a, b, onA, onB)))
                .Sample(
                    c =>
                    {
                        BoxPair[] pairs = TransferPlan.Of(c.a.Tree, c.b.Tree, Wavenumber, -Math.Log(1e-2)).Pairs;
                        FieldSample[] onB = new FieldSample[c.b.Points.Length], onA = new FieldSample[c.a.Points.Length];
                        new OneWay(c.a.Tree, c.b.Tree, pairs, Wavenumber, cost: 0.0).Add(c.onA, onB);
                        new OneWay(c.b.Tree, c.a.Tree, pairs.Select(p => new BoxPair(p.Second, p.First, p.SecondGrid, p.FirstGrid)), Wavenumber, cost: 0.0).Add(c.onB, onA);
                        Complex there = Reaction(onB, c.onB), back = Reaction(onA, c.onA);
                        Close.Absolute(0.0, Complex.Abs(there - back) / Complex.Abs(there), 1e-9); // rounding of sums that cancel
                    },
                    iter: 20);

        [Theory]
        [InlineData(0.0)]
        [InlineData(double.NaN)]
        [InlineData(0.2)]
        public void Refuses_a_tolerance_out_of_its_range(double tolerance) => Assert.Throws<ArgumentOutOfRangeException>(
            nameof(tolerance), () => FieldTransfer.Between(Body.Sheet(0.1, 0.1, default).Tree, Body.Table(0.1, 0.1).Tree, Wavenumber, tolerance));

        [Theory]
        [InlineData(0.0)]
        [InlineData(double.NaN)]
        [InlineData(double.PositiveInfinity)]
        public void Refuses_a_wavenumber_that_is_not_finite_and_positive(double wavenumber) => Assert.Throws<ArgumentOutOfRangeException>(
            nameof(wavenumber), () => FieldTransfer.Between(Body.Sheet(0.1, 0.1, default).Tree, Body.Table(0.1, 0.1).Tree, wavenumber));

        private static Complex Reaction(FieldSample[] fields, CurrentSamples currents)
        {
            Complex sum = Complex.Zero;
            for (int i = 0; i < fields.Length; i++)
            {
                sum += ComplexVector.Dot(fields[i].Electric, currents.Electric[i]) - ComplexVector.Dot(fields[i].Magnetic, currents.Magnetic[i]);
            }

            return sum;
        }
    }
}
