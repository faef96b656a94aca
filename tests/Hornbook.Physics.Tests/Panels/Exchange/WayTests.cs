using System.Numerics;
using CsCheck;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Exchange;
using Hornbook.Physics.Panels.Exchange.Legs;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Tests.Radiation;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Exchange;

public static class WayTests
{
    private const double Frequency = 10.5e9;

    private static readonly ISheet[] Sheets = [new Metal(), new LayeredSheet(new Layer(Dielectrics.Find("glass")!, 4e-3))];

    private static readonly Vector From = new(0.5, 0.0, 0.4);

    // Straight before it, so that both have an axis in common, or not.
    private static readonly Gen<Vector> Aside = Gen.OneOf(Gen.Const(default(Vector)), Gen.Double[-0.05, 0.05].Select(aside => new Vector(0.0, aside, 0.01)));

    private static PanelInPlace Held(ISheet sheet, Pose pose) =>
        new(new PosedPanel(PreparedPanel.At(new Panel(new RectangularSurface(0.15, 0.12), sheet), Frequency), pose), default);

    // Parallel, shifted or turned round or straight before each other and rolled, near and far: by lattice, by turns, by nodes and by pairs; the rims of metal beside its cells.
    [Fact]
    public static void What_comes_from_a_panel_is_what_summing_every_pair_gives() =>
        Gen.Select(Gen.Int[0, 1].Select(i => Sheets[i]), Gen.Double[0.01, 0.4], Aside, Gen.Int[0, 2].Select(i => new[] { 0.0, Math.PI, 0.3 }[i]), Gen.Int[0, 2].Select(i => new[] { 0.0, Math.PI, 0.4 }[i])).Sample(
            (sheet, away, aside, turn, roll) =>
            {
                double wavenumber = FreeSpace.Wavenumber(Frequency);
                PanelInPlace from = Held(sheet, new Pose(From)), to = Held(sheet, new Pose(From + aside + new Vector(away, 0.0, 0.0), turn, roll: roll));
                CurrentSamples currents = new(
                    from.Cells.Points, [.. from.Cells.Points.Select(p => new ComplexVector(0.0, p.Y, Complex.FromPolarCoordinates(1.0, 90.0 * p.Z)))], new ComplexVector[from.Cells.Points.Length]);
                Arrivals expected = to.Nothing(), actual = to.Nothing();
                Way.Between(from.Cells, to, wavenumber, WayUse.Light with { FewPairs = long.MaxValue }).Add(currents, expected);
                Way.Between(from.Cells, to, wavenumber, WayUse.Sweeps with { OnlyJumps = false }).Add(currents, actual);
                foreach (SheetFace face in Enum.GetValues<SheetFace>())
                {
                    Assert.Equal(expected.On(face).Length, actual.On(face).Length);
                    if (!expected.On(face).IsEmpty)
                    {
                        Close.Absolute(0.0, FieldErrors.Largest(expected.On(face).ToArray(), actual.On(face).ToArray()), 5e-4);
                    }
                }
            },
            iter: 60);

    // Electric and magnetic currents both: at the cells of metal only the magnetic field is then summed. derived: twice the transfer's tolerance, since that is of the largest field.
    [Fact]
    public static void What_metal_answers_is_the_same_where_only_its_jumps_are_asked_for() =>
        Gen.Select(Gen.Double[0.01, 0.2], Aside, Gen.OneOf(Gen.Const(0.0), Gen.Double[-0.4, 0.4])).Sample(
            (away, aside, turn) =>
            {
                double wavenumber = FreeSpace.Wavenumber(Frequency);
                PanelInPlace from = Held(Sheets[1], new Pose(From)), to = Held(Sheets[0], new Pose(From + aside + new Vector(away, 0.0, 0.0), turn, roll: 0.4));
                CurrentSamples currents = new(
                    from.Cells.Points,
                    [.. from.Cells.Points.Select(p => new ComplexVector(0.0, p.Y, Complex.FromPolarCoordinates(1.0, 90.0 * p.Z)))],
                    [.. from.Cells.Points.Select(p => new ComplexVector(0.0, 377.0 * Complex.FromPolarCoordinates(1.0, 70.0 * p.Y), 100.0))]);
                CurrentSamples Answer(WayUse use)
                {
                    Arrivals arrivals = to.Nothing();
                    Way.Between(from.Cells, to, wavenumber, use).Add(currents, arrivals);
                    return to.Answer(arrivals);
                }

                CurrentSamples expected = Answer(WayUse.Light with { FewPairs = long.MaxValue }), actual = Answer(WayUse.Sweeps with { FewPairs = 0 });
                Close.Absolute(0.0, Math.Sqrt(actual.Plus(expected, -1.0).Squared() / expected.Squared()), 1e-3);
            },
            iter: 30);

    [Fact]
    public static void What_is_known_of_one_face_need_not_be_worked_out_again() =>
        Assert.All(Enum.GetValues<SheetFace>(), face =>
        {
            PanelInPlace panel = Held(Sheets[1], new Pose(From));
            Arrivals arrivals = panel.Nothing();
            foreach (Vector lamp in new[] { new Vector(-0.1, 0.02, 0.0), new Vector(0.1, 0.0, 0.03) })
            {
                CurrentSamples lit = new([From + lamp], [new ComplexVector(0.0, 1.0, 0.5)], [default]);
                Way way = Way.Between(Body.Of(lit.Points.ToArray(), Frame.Of(default)), panel, FreeSpace.Wavenumber(Frequency), WayUse.Light);
                Assert.Equal(face == (lamp.X > 0.0 ? SheetFace.Front : SheetFace.Back), way.Meets(face));
                way.Add(lit, arrivals);
            }

            Assert.Equal(0.0, panel.Answer(arrivals, panel.AnswerOn(face, arrivals)).Plus(panel.Answer(arrivals), -1.0).Squared());
            Assert.NotEqual(0.0, panel.AnswerOn(face, arrivals).Electric.Sum(j => j.SquaredMagnitude));
        });
}
