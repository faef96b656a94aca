using CsCheck;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Transfers;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation.Transfers;

public static class PlaneViewTests
{
    // Common practice, no source: 10.5 GHz, about the middle of the band of the bench.
    private const double Wavenumber = 220.0;

    private static readonly FieldPart[] WhatIsAsked = Enum.GetValues<FieldPart>();

    // For each kind, what is left of random currents in the panel's own frame, whose normal is x.
    public static TheoryData<string, string, string> Kinds => new()
    {
        { nameof(CurrentKind.Plane), "yz", "yz" },
        { nameof(CurrentKind.Plane), "yz", "z" },
        { nameof(CurrentKind.ElectricPlane), "yz", "" },
        { nameof(CurrentKind.Mouth), "z", "y" },
        { nameof(CurrentKind.Any), "xyz", "yz" },
    };

    // derived: rounding only, since both sum every source for every observer.
    [Theory]
    [MemberData(nameof(Kinds))]
    public static void However_a_flat_body_is_held_its_currents_send_what_they_send_with_every_component_summed(string kind, string electric, string magnetic) =>
        Gen.Select(Body.Panel(Vector.Zero, 0.1), Body.Cloud(new Vector(0.1, 0.2, 0.05), 0.1, 60)).SelectMany((a, b) => RandomCurrents.At(a.Points).Select(all => (a, b, all))).Sample(
            c =>
            {
                CurrentSamples sent = new(
                    c.a.Points, Array.ConvertAll(c.all.Electric.ToArray(), j => c.a.Axes.Turn(Left(j, electric))), Array.ConvertAll(c.all.Magnetic.ToArray(), m => c.a.Axes.Turn(Left(m, magnetic))));
                PlaneView view = PlaneView.Of(c.a.Tree, c.b.Tree)!;
                Assert.Equal(kind, PlaneView.Kind(Array.ConvertAll(sent.Electric.ToArray(), view.Axes.Own), Array.ConvertAll(sent.Dual.ToArray(), view.Axes.Own)).ToString());

                FieldSample[] expected = new FieldSample[c.b.Points.Length];
                RadiatedField.Evaluate(sent, Wavenumber, c.b.Points, expected);
                Assert.All(WhatIsAsked, part =>
                {
                    FieldSample[] fields = new FieldSample[expected.Length];
                    new OneWay(c.a.Tree, c.b.Tree, [new BoxPair(c.a.Tree.Root, c.b.Tree.Root, null, null)], Wavenumber, cost: 0.0, part: part).Add(sent, fields);
                    Close.Absolute(0.0, FieldErrors.Largest(FieldErrors.Asked(expected, part, c.a.Axes.Forward), FieldErrors.Asked(fields, part, c.a.Axes.Forward)), 1e-12);
                });
            },
            iter: 10);

    [Fact]
    public static void Sources_that_lie_in_no_plane_have_no_such_view() =>
        Body.Cloud(Vector.Zero, 0.1, 50).Sample(cloud => Assert.Null(PlaneView.Of(cloud.Tree, cloud.Tree)), iter: 5);

    private static ComplexVector Left(ComplexVector all, string axes) => new(axes.Contains('x') ? all.X : 0.0, axes.Contains('y') ? all.Y : 0.0, axes.Contains('z') ? all.Z : 0.0);
}
