using System.Numerics;
using CsCheck;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation;

public static class RadiatedFieldTests
{
    private static FieldSample At(CurrentSamples currents, double wavenumber, Vector point)
    {
        FieldSample[] field = new FieldSample[1];
        RadiatedField.Evaluate(currents, wavenumber, [point], field);
        return field[0];
    }

    private static double Largest(ComplexVector v) =>
        Math.Max(Complex.Abs(v.X), Math.Max(Complex.Abs(v.Y), Complex.Abs(v.Z)));

    private static double Magnitude(FieldSample field) =>
        (Largest(field.Electric) / Constants.VacuumImpedance) + Largest(field.Magnetic);

    /// <summary>Each component within a tolerance of the largest one.</summary>
    private static void Same(ComplexVector expected, ComplexVector actual, double tolerance) =>
        Close.Absolute(0.0, Largest(actual + (expected * -1.0)) / Largest(expected), tolerance);

    /// <summary>Σ (η|J| + |M|): what the far field of the elements cannot exceed, but for k/4πR.</summary>
    private static double Strength(CurrentSamples currents)
    {
        double sum = 0.0;
        for (int i = 0; i < currents.Count; i++)
        {
            sum += (Constants.VacuumImpedance * Math.Sqrt(currents.Electric[i].SquaredMagnitude)) + Math.Sqrt(currents.Magnetic[i].SquaredMagnitude);
        }

        return sum;
    }

    public sealed class Evaluate
    {
        private static readonly Vector Source = new(0.1, -0.2, 0.3);

        private delegate void Kernel(CurrentSamples currents, double wavenumber, ReadOnlySpan<Vector> points, Span<FieldSample> fields);

        [Fact]
        public void Equals_the_scalar_formula() => EqualsTheScalarFormula(RadiatedField.Evaluate);

        [Fact]
        public void Equals_the_scalar_formula_in_128_bits() => EqualsTheScalarFormula(FieldKernel<Lanes128>.Evaluate);

        [Fact]
        public void Equals_the_scalar_formula_in_256_bits() => EqualsTheScalarFormula(FieldKernel<Lanes256>.Evaluate);

        [Fact]
        public void Equals_the_scalar_formula_in_512_bits() => EqualsTheScalarFormula(FieldKernel<Lanes512>.Evaluate);

        // Any currents, or those of a mouth or of metal, for which the kernel has forms of its own.
        private static readonly Gen<CurrentSamples> Currents =
            Gen.OneOf(RandomCurrents.InCube(Vector.Zero, 0.1, 70), RandomCurrents.InMouth(0.1, 70), RandomCurrents.OnMetal(0.1, 70))
                .Where(c => Strength(c) > 1e-9);

        // Up to 70 sources are up to three strips, up to 19 observers up to three registers: full, part full and single ones occur.
        private static void EqualsTheScalarFormula(Kernel kernel) =>
            Gen.Select(Currents, RandomCurrents.Wavenumber, RandomCurrents.Place(new Vector(0.4, 0, 0), 0.25).Array[1, 19])
                .Sample((currents, wavenumber, points) =>
                {
                    // Rounding is a share of what the elements give one by one, also where their sum cancels.
                    CurrentSamples[] elements = [.. Enumerable.Range(0, currents.Count).SelectMany(s => new[]
                    {
                        new CurrentSamples([currents.Points[s]], [currents.Electric[s]], [default]),
                        new CurrentSamples([currents.Points[s]], [default], [currents.Magnetic[s]]),
                    })];
                    FieldSample[] fields = new FieldSample[points.Length];
                    kernel(currents, wavenumber, points, fields);
                    for (int i = 0; i < points.Length; i++)
                    {
                        FieldSample expected = ScalarField.At(currents, wavenumber, points[i]);
                        double scale = elements.Sum(e => Magnitude(ScalarField.At(e, wavenumber, points[i])));
                        Close.Absolute(0.0, Largest(fields[i].Electric + (expected.Electric * -1.0)) / Constants.VacuumImpedance / scale, 1e-12);
                        Close.Absolute(0.0, Largest(fields[i].Magnetic + (expected.Magnetic * -1.0)) / scale, 1e-12);
                    }
                },
                iter: 300);

        [Theory]
        [InlineData(0.001)]
        [InlineData(0.02)]
        [InlineData(3.0)]
        public void A_short_current_gives_the_closed_form_of_the_Hertzian_dipole(double distance)
        {
            // [Balanis2016] ch. 4, infinitesimal dipole: E_r, E_θ and H_φ of a current moment I l along z, seen at θ = 0.7.
            const double K = 220.0, Theta = 0.7;
            Complex phase = Complex.FromPolarCoordinates(1.0, -K * distance);
            Complex q = 1.0 / new Complex(0.0, K * distance);
            Complex radial = Constants.VacuumImpedance * Math.Cos(Theta) / (2.0 * Math.PI * distance * distance) * (1.0 + q) * phase;
            Complex polar = Complex.ImaginaryOne * Constants.VacuumImpedance * K * Math.Sin(Theta) / (4.0 * Math.PI * distance) * (1.0 + q + (q * q)) * phase;
            Complex around = Complex.ImaginaryOne * K * Math.Sin(Theta) / (4.0 * Math.PI * distance) * (1.0 + q) * phase;
            Vector r = new(Math.Sin(Theta), 0.0, Math.Cos(Theta)), theta = new(Math.Cos(Theta), 0.0, -Math.Sin(Theta)), phi = new(0.0, 1.0, 0.0);

            FieldSample field = At(RandomCurrents.Element(new ComplexVector(0, 0, 1), default), K, r * distance);
            Same(ComplexVector.Along(r, radial) + ComplexVector.Along(theta, polar), field.Electric, 1e-13);
            Same(ComplexVector.Along(phi, around), field.Magnetic, 1e-13);
        }

        [Fact]
        public void A_magnetic_current_is_dual_to_an_electric_one()
        {
            // Duality, [Harrington1961] ch. 3: J → M, E → H, H → −E, η → 1/η.
            const double K = 220.0;
            ComplexVector moment = new(new Complex(1, 2), new Complex(-3, 1), new Complex(0.5, -1));
            Vector point = new(0.013, -0.004, 0.009);
            FieldSample electric = At(RandomCurrents.Element(moment, default), K, point);
            FieldSample magnetic = At(RandomCurrents.Element(default, moment), K, point);
            Same(electric.Electric * (1.0 / (Constants.VacuumImpedance * Constants.VacuumImpedance)), magnetic.Magnetic, 1e-14);
            Same(electric.Magnetic * -1.0, magnetic.Electric, 1e-14);
        }

        [Fact]
        public void Very_near_it_is_the_static_dipole_and_the_law_of_Biot_and_Savart()
        {
            // Derived: for kR → 0 a moment p = J dS/jω has E = (3(p·R̂)R̂ − p)/4πε0R³ and H = J dS × R̂/4πR²; the next term is (kR)² smaller.
            const double K = 1.0, Distance = 1e-4;
            Vector d = new Vector(0.3, -0.8, 0.5).Unit, j = new(1.0, 0.4, -0.7);
            FieldSample field = At(RandomCurrents.Element(ComplexVector.Along(j, 1.0), default), K, d * Distance);
            Complex p = 1.0 / new Complex(0.0, K * Constants.SpeedOfLight);
            Vector dipole = (d * (3.0 * Vector.Dot(j, d))) - j;
            Same(ComplexVector.Along(dipole, p / (4.0 * Math.PI * Constants.ElectricConstant * Math.Pow(Distance, 3))), field.Electric, 2e-8);
            Same(ComplexVector.Along(Vector.Cross(j, d), 1.0 / (4.0 * Math.PI * Distance * Distance)), field.Magnetic, 2e-8);
        }

        [Fact]
        public void Far_away_it_is_the_far_field() =>
            // Derived: what the far field leaves out is of order k a²/R and 1/(kR), here below 1e-5 of what the elements give at most:
            // in a direction in which they cancel, it is all there is.
            Gen.Select(RandomCurrents.InCube(Vector.Zero, 0.01, 20), RandomCurrents.Place(Vector.Zero, 1.0)).Where(c => c.Item2.Length > 0.1 && Strength(c.Item1) > 1e-9)
                .Sample((currents, towards) =>
                {
                    const double K = 220.0, Distance = 1e4;
                    ComplexVector far = FarField.At(currents, K, towards.Unit);
                    Complex spread = Complex.FromPolarCoordinates(1.0 / Distance, -K * Distance);
                    ComplexVector near = At(currents, K, towards.Unit * Distance).Electric;
                    Close.Absolute(0.0, Largest(near + (far * -spread)) / (K / (4.0 * Math.PI * Distance) * Strength(currents)), 1e-5);
                });

        [Fact]
        public void Of_no_currents_there_is_no_field_whatever_was_there_before()
        {
            ComplexVector left = new(1.0, 2.0, 3.0);
            FieldSample[] fields = [new(left, left), new(left, left)];
            RadiatedField.Evaluate(CurrentSamples.None, 220.0, [Vector.Zero, Vector.UnitX], fields);
            Assert.All(fields, field => Assert.Equal(default, field));
        }

        [Fact]
        public void On_a_source_there_is_no_number() =>
            Assert.True(double.IsNaN(At(RandomCurrents.Element(new ComplexVector(0, 0, 1), default), 1.0, Vector.Zero).Electric.X.Real));

        [Fact]
        public void Allocates_nothing()
        {
            CurrentSamples currents = RandomCurrents.InCube(Source, 0.1, 70).Single();
            Vector[] points = new Vector[19];
            FieldSample[] fields = new FieldSample[19];
            RadiatedField.Evaluate(currents, 220.0, points, fields);
            long before = GC.GetAllocatedBytesForCurrentThread();
            RadiatedField.Evaluate(currents, 220.0, points, fields);
            Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        [Theory]
        [InlineData(0.0)]
        [InlineData(-1.0)]
        [InlineData(double.NaN)]
        [InlineData(double.PositiveInfinity)]
        public void Refuses_a_wavenumber_that_is_not_finite_and_positive(double wavenumber) =>
            Assert.Throws<ArgumentOutOfRangeException>(nameof(wavenumber), () => At(RandomCurrents.Element(default, default), wavenumber, Source));

        [Fact]
        public void Refuses_too_little_room() =>
            Assert.Throws<ArgumentException>(() => RadiatedField.Evaluate(RandomCurrents.Element(default, default), 1.0, [Source, Source], new FieldSample[1]));
    }

    public sealed class EvaluateMap
    {
        [Fact]
        public void Is_the_same_to_the_last_bit()
        {
            // 600 points are three pieces of work, the last one short.
            CurrentSamples currents = RandomCurrents.InCube(Vector.Zero, 0.1, 40).Single();
            Vector[] points = RandomCurrents.Place(new Vector(0.5, 0, 0), 0.3).Array[600].Single();
            FieldSample[] expected = new FieldSample[points.Length], actual = new FieldSample[points.Length];
            RadiatedField.Evaluate(currents, 220.0, points, expected);
            RadiatedField.EvaluateMap(currents, 220.0, points, actual);
            Assert.Equal(expected, actual);
        }
    }
}
