using CsCheck;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Lattices;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation.Lattices;

/// <summary>The transfer against the direct sum, which is tested for itself.</summary>
public static class LatticeTransferTests
{
    private static readonly Gen<Lattice> Sources = Gen.Select(Gen.Int[2, 12], Gen.Int[2, 12], Gen.Double[0.003, 0.009], Gen.Double[0.003, 0.009])
        .Select(c => new Lattice(new Vector(0.7, 0.1, 0.4), new Vector(0.0, c.Item3, 0.0), new Vector(0.001, 0.0, c.Item4), c.Item1, c.Item2));

    // Near or far, shifted by any part of a step, and counted from any end.
    private static readonly Gen<(Vector Away, int Columns, int Rows, bool Left, bool Down)> Others = Gen.Select(
        Gen.Select(Gen.Double[0.004, 0.3], Gen.Double[-0.1, 0.1], Gen.Double[-0.1, 0.1], (x, y, z) => new Vector(x, y, z)), Gen.Int[2, 12], Gen.Int[2, 12], Gen.Bool, Gen.Bool);

    private static Lattice Other(Lattice sources, (Vector Away, int Columns, int Rows, bool Left, bool Down) other) => new(
        sources.First + other.Away, sources.Column * (other.Left ? -1.0 : 1.0), sources.Row * (other.Down ? -1.0 : 1.0), other.Columns, other.Rows);

    private static Vector[] Places(Lattice lattice) => [.. Enumerable.Range(0, lattice.Count).Select(i => lattice.Place(i % lattice.Columns, i / lattice.Columns))];

    [Fact]
    public static void Agrees_with_the_direct_sum_wherever_the_lattices_stand_and_with_any_width_of_registers() =>
        Gen.Select(Sources, Others, RandomCurrents.Wavenumber).SelectMany((sources, other, k) => RandomCurrents.At(Places(sources)).Select(currents => (sources, other, k, currents))).Sample(
            c =>
            {
                Lattice observers = Other(c.sources, c.other);
                FieldSample[] expected = new FieldSample[observers.Count];
                RadiatedField.Evaluate(c.currents, c.k, Places(observers), expected);
                LatticeTransfer transfer = LatticeTransfer.Between(c.sources, observers, c.k)!;

                // The kernel is kept in floats.
                Close.Absolute(0.0, FieldErrors.Largest(expected, With<Lanes128>(transfer, c.currents, observers.Count)), 1e-6);
                Close.Absolute(0.0, FieldErrors.Largest(expected, With<Lanes256>(transfer, c.currents, observers.Count)), 1e-6);
                Close.Absolute(0.0, FieldErrors.Largest(expected, With<Lanes512>(transfer, c.currents, observers.Count)), 1e-6);
            },
            iter: 60);

    [Fact]
    public static void Adds_to_what_is_there()
    {
        Lattice sources = new(default, new Vector(0.0, 0.005, 0.0), new Vector(0.0, 0.0, 0.005), 30, 30), observers = sources with { First = new Vector(0.05, 0.0, 0.0) };
        CurrentSamples currents = new(Places(sources), [.. Places(sources).Select(place => new ComplexVector(0.0, place.Y, 1.0))], new ComplexVector[sources.Count]);
        LatticeTransfer transfer = LatticeTransfer.Between(sources, observers, 220.0)!;
        FieldSample[] once = new FieldSample[observers.Count], twice = new FieldSample[observers.Count];
        transfer.Add(currents, once);
        transfer.Add(currents, twice);
        transfer.Add(currents, twice);
        Assert.All(once.Zip(twice), pair => Close.Relative(2.0 * FieldErrors.Magnitude(pair.First), FieldErrors.Magnitude(pair.Second), 1e-12));
    }

    [Fact]
    public static void There_is_none_between_lattices_with_other_steps()
    {
        Lattice one = new(default, new Vector(0.0, 0.005, 0.0), new Vector(0.0, 0.0, 0.005), 5, 5);
        Assert.Null(LatticeTransfer.Between(one, one with { First = new Vector(0.1, 0.0, 0.0), Row = new Vector(0.0, 0.0, 0.006) }, 220.0));
        Assert.Null(LatticeTransfer.Between(one, one with { First = new Vector(0.1, 0.0, 0.0), Row = new Vector(0.0, 0.005, 0.0), Column = new Vector(0.0, 0.0, 0.005) }, 220.0));
    }

    private static FieldSample[] With<T>(LatticeTransfer transfer, CurrentSamples currents, int observers)
        where T : unmanaged, ILanes<T>
    {
        FieldSample[] fields = new FieldSample[observers];
        transfer.Add<T>(currents, fields);
        return fields;
    }
}
