using System.Numerics;
using CsCheck;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Tests.Radiation;

/// <summary>Random currents with every component, electric and magnetic of like strength.</summary>
internal static class RandomCurrents
{
    private static readonly Gen<Complex> Amplitude =
        Gen.Select(Gen.Double[-1.0, 1.0], Gen.Double[-1.0, 1.0], (re, im) => new Complex(re, im));

    private static readonly Gen<ComplexVector> Phasor = Gen.Select(Amplitude, Amplitude, Amplitude, (x, y, z) => new ComplexVector(x, y, z));

    /// <summary>Wavenumbers of 3 GHz to 40 GHz [1/m].</summary>
    internal static Gen<double> Wavenumber { get; } = Gen.Double[3e9, 40e9].Select(f => 2.0 * Math.PI * f / Constants.SpeedOfLight);

    /// <summary>Points in a cube.</summary>
    internal static Gen<Vector> Place(Vector centre, double halfSide) =>
        Gen.Select(Gen.Double[-halfSide, halfSide], Gen.Double[-halfSide, halfSide], Gen.Double[-halfSide, halfSide])
            .Select(p => centre + new Vector(p.Item1, p.Item2, p.Item3));

    /// <summary>Currents at points in a cube.</summary>
    internal static Gen<CurrentSamples> InCube(Vector centre, double halfSide, int most) =>
        Gen.Int[1, most].SelectMany(n => Gen.Select(Place(centre, halfSide).Array[n], Phasor.Array[n], Phasor.Array[n]))
            .Select(c => new CurrentSamples(c.Item1, c.Item2, Array.ConvertAll(c.Item3, m => m * Constants.VacuumImpedance)));

    /// <summary>Currents of a mouth in its own frame: electric ones along z, magnetic ones along y.</summary>
    internal static Gen<CurrentSamples> InMouth(double halfSide, int most) => InCube(Vector.Zero, halfSide, most).Select(c => new CurrentSamples(
        Array.ConvertAll(c.Points.ToArray(), p => p with { X = 0.0 }),
        Array.ConvertAll(c.Electric.ToArray(), j => new ComplexVector(0, 0, j.Z)),
        Array.ConvertAll(c.Magnetic.ToArray(), m => new ComplexVector(0, m.Y, 0))));

    /// <summary>Currents on metal: electric ones only.</summary>
    internal static Gen<CurrentSamples> OnMetal(double halfSide, int most) =>
        InCube(Vector.Zero, halfSide, most).Select(c => new CurrentSamples(c.Points, c.Electric, new ComplexVector[c.Count]));

    /// <summary>Currents at given points, every component of them.</summary>
    internal static Gen<CurrentSamples> At(Vector[] points) => Gen.Select(Phasor.Array[points.Length], Phasor.Array[points.Length])
        .Select(c => new CurrentSamples(points, c.Item1, Array.ConvertAll(c.Item2, m => m * Constants.VacuumImpedance)));

    /// <summary>One current element at the origin.</summary>
    internal static CurrentSamples Element(ComplexVector electric, ComplexVector magnetic) => new([Vector.Zero], [electric], [magnetic]);
}
