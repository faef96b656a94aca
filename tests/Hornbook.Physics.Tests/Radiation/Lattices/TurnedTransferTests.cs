using CsCheck;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Lattices;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation.Lattices;

/// <summary>The transfer against the direct sum, which is tested for itself.</summary>
public static class TurnedTransferTests
{
    // Common practice, no source: 10.5 GHz, about the middle of the band of the bench.
    private const double Wavenumber = 220.0;

    // As that of floats elsewhere, of the largest field.
    private const double LostInFloats = 2e-5;

    private static readonly Pose Stand = new(new Vector(0.7, 0.1, 0.4), 0.3, -0.2, 0.5);

    private static readonly Gen<Shape> Shapes = Gen.Select(Gen.Int[2, 12], Gen.Int[2, 12], Gen.Double[0.003, 0.009], Gen.Double[0.003, 0.009], Gen.Bool)
        .Select(c => c.Item5 ? new Shape(c.Item1, c.Item1, c.Item3, c.Item3) : new Shape(c.Item1, c.Item2, c.Item3, c.Item4));

    // Before it or behind, rolled, and facing it or looking the same way; counted from any corner.
    private static readonly Gen<(Shape Shape, double Away, double Roll, bool Turned, bool Left)> Others =
        Gen.Select(Shapes, Gen.Double[0.004, 0.3], Gen.Double[-3.0, 3.0], Gen.Bool, Gen.Bool);

    [Fact]
    public static void Agrees_with_the_direct_sum_however_the_lattices_are_rolled_and_with_any_width_of_registers() =>
        Gen.Select(Shapes, Others).SelectMany((shape, other) => RandomCurrents.At(Places(shape.At(Stand))).Select(currents => (shape, other, currents))).Sample(
            c =>
            {
                Lattice sources = c.shape.At(Stand), observers = Other(c.other);
                FieldSample[] expected = new FieldSample[observers.Count];
                RadiatedField.Evaluate(c.currents, Wavenumber, Places(observers), expected);
                TurnedTransfer transfer = TurnedTransfer.Between(sources, observers, Wavenumber)!;
                Close.Absolute(0.0, FieldErrors.Largest(expected, With<SingleLanes128>(transfer, c.currents, observers.Count)), LostInFloats);
                Close.Absolute(0.0, FieldErrors.Largest(expected, With<SingleLanes256>(transfer, c.currents, observers.Count)), LostInFloats);
                Close.Absolute(0.0, FieldErrors.Largest(expected, With<SingleLanes512>(transfer, c.currents, observers.Count)), LostInFloats);
            },
            iter: 200);

    [Fact]
    public static void What_is_asked_for_of_the_field_of_currents_along_the_lattice_is_there() =>
        Gen.Select(Shapes, Others).SelectMany((shape, other) => RandomCurrents.At(Places(shape.At(Stand))).Select(currents => (shape, other, currents))).Sample(
            c =>
            {
                Lattice sources = c.shape.At(Stand), observers = Other(c.other);
                ComplexVector Flat(ComplexVector v) => v + ComplexVector.Along(sources.Normal, -v.Component(sources.Normal));
                CurrentSamples sent = new(c.currents.Points, Array.ConvertAll(c.currents.Electric.ToArray(), Flat), Array.ConvertAll(c.currents.Magnetic.ToArray(), Flat));
                FieldSample[] expected = new FieldSample[observers.Count];
                RadiatedField.Evaluate(sent, Wavenumber, Places(observers), expected);
                Assert.All(Enum.GetValues<FieldPart>(), part =>
                {
                    FieldSample[] fields = new FieldSample[observers.Count];
                    TurnedTransfer.Between(sources, observers, Wavenumber, part)!.Add(sent, fields);
                    Close.Absolute(0.0, FieldErrors.Largest(FieldErrors.Asked(expected, part, sources.Normal), FieldErrors.Asked(fields, part, sources.Normal)), LostInFloats);
                });
            },
            iter: 60);

    [Fact]
    public static void Adds_to_what_is_there_on_several_threads_as_on_one()
    {
        // So many pairs that they are shared out; the middle of the observers lies on the axis.
        Lattice sources = new Shape(40, 40, 0.005, 0.005).At(Stand), observers = Other((new Shape(41, 41, 0.004, 0.004), 0.02, 0.3, false, false));
        CurrentSamples currents = new(Places(sources), [.. Places(sources).Select(place => new ComplexVector(0.2, place.Y, 1.0))], new ComplexVector[sources.Count]);
        TurnedTransfer transfer = TurnedTransfer.Between(sources, observers, Wavenumber)!;
        FieldSample[] expected = new FieldSample[observers.Count], once = new FieldSample[observers.Count], twice = new FieldSample[observers.Count];
        RadiatedField.Evaluate(currents, Wavenumber, Places(observers), expected);
        transfer.Add(currents, once);
        transfer.Add(currents, twice);
        transfer.Add(currents, twice);
        Close.Absolute(0.0, FieldErrors.Largest(expected, once), LostInFloats);
        Assert.All(once.Zip(twice), pair => Close.Relative(2.0 * FieldErrors.Magnitude(pair.First), FieldErrors.Magnitude(pair.Second), 1e-12));
    }

    [Fact]
    public static void There_is_none_between_lattices_that_are_not_parallel_or_have_no_axis_in_common()
    {
        Lattice one = new Shape(5, 5, 0.005, 0.005).At(default), other = new Shape(8, 8, 0.004, 0.004).At(new Pose(new Vector(0.02, 0.0, 0.0), roll: 0.4));
        Assert.NotNull(TurnedTransfer.Between(one, other, Wavenumber));
        Assert.Null(TurnedTransfer.Between(one, new Shape(8, 8, 0.004, 0.004).At(new Pose(new Vector(0.02, 0.0, 1e-6), roll: 0.4)), Wavenumber));
        Assert.Null(TurnedTransfer.Between(one, new Shape(8, 8, 0.004, 0.004).At(new Pose(new Vector(0.02, 0.0, 0.0), turn: 1e-4)), Wavenumber));
    }

    private static Vector[] Places(Lattice lattice) => [.. Enumerable.Range(0, lattice.Count).Select(i => lattice.Place(i % lattice.Columns, i / lattice.Columns))];

    private static Lattice Other((Shape Shape, double Away, double Roll, bool Turned, bool Left) other)
    {
        Lattice stands = other.Shape.At(Stand with { Position = Stand.Position + (Stand.Forward * (other.Turned ? -other.Away : other.Away)), Roll = Stand.Roll + other.Roll });
        return other.Left ? stands with { First = stands.Place(stands.Columns - 1, 0), Column = -stands.Column } : stands;
    }

    private static FieldSample[] With<T>(TurnedTransfer transfer, CurrentSamples currents, int observers)
        where T : unmanaged, ILanes<T>
    {
        FieldSample[] fields = new FieldSample[observers];
        transfer.Add<T>(currents, fields);
        return fields;
    }

    /// <summary>A rectangle of places.</summary>
    private sealed record Shape(int Columns, int Rows, double Column, double Row)
    {
        internal Lattice At(Pose pose) => new Lattice(
            new Vector(0.0, -0.5 * (Columns - 1) * Column, -0.5 * (Rows - 1) * Row), new Vector(0.0, Column, 0.0), new Vector(0.0, 0.0, Row), Columns, Rows).Posed(Frame.Of(pose));
    }
}
