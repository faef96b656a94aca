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

    private static PanelInPlace Held(ISheet sheet, Pose pose) =>
        new(new PosedPanel(PreparedPanel.At(new Panel(new RectangularSurface(0.15, 0.12), sheet), Frequency), pose), default);

    // Parallel, shifted or turned round, near and far: by lattice, by nodes and by pairs; the rims of metal beside its cells.
    [Fact]
    public static void What_comes_from_a_panel_is_what_summing_every_pair_gives() =>
        Gen.Select(Gen.Int[0, 1].Select(i => Sheets[i]), Gen.Double[0.01, 0.4], Gen.Double[-0.05, 0.05], Gen.Int[0, 2].Select(i => new[] { 0.0, Math.PI, 0.3 }[i]), Gen.Int[0, 1].Select(i => Math.PI * i)).Sample(
            (sheet, away, aside, turn, roll) =>
            {
                double wavenumber = FreeSpace.Wavenumber(Frequency);
                PanelInPlace from = Held(sheet, new Pose(new Vector(0.5, 0.0, 0.4))), to = Held(sheet, new Pose(new Vector(0.5 + away, aside, 0.41), turn, roll: roll));
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
            iter: 40);

    // Electric and magnetic currents both: at the cells of metal only the magnetic field is then summed. derived: twice the transfer's tolerance, since that is of the largest field.
    [Fact]
    public static void What_metal_answers_is_the_same_where_only_its_jumps_are_asked_for() =>
        Gen.Select(Gen.Double[0.01, 0.2], Gen.Double[-0.05, 0.05], Gen.Double[-0.4, 0.4]).Sample(
            (away, aside, turn) =>
            {
                double wavenumber = FreeSpace.Wavenumber(Frequency);
                PanelInPlace from = Held(Sheets[1], new Pose(new Vector(0.5, 0.0, 0.4))), to = Held(Sheets[0], new Pose(new Vector(0.5 + away, aside, 0.41), turn));
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
            iter: 20);
}
