using CsCheck;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Exchange;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;
using static Hornbook.Physics.Tests.Panels.PanelBenches;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Tests.Panels.Exchange;

public static class MouthTests
{
    // So many cells that the field is interpolated, except where the mouth is near.
    private static readonly PosedPanel Plate = Square(new Metal(), 0.3, new Pose(new Vector(0.5, 0.0, 0.0), turn: 0.3));

    [Fact]
    public static void What_it_receives_of_a_large_panel_is_what_summing_every_pair_gives()
    {
        PanelExchange exchange = PanelExchange.Of(new Mouth(LargeHorn, AtOrigin), [Plate]);
        CurrentSamples currents = PanelSweeps.Run(exchange, Settling.Fine).Currents[0];
        Gen.Select(Gen.Double[-1.0, 1.0], Gen.Double[-0.5, 0.5], Gen.Double[-0.3, 0.3], Gen.Double[-3.0, 3.0], Gen.Double[-1.5, 1.5]).Where((x, y, _, _, _) => Math.Abs(x) > 0.05 || Math.Abs(y) > 0.2).Sample(
            (x, y, z, turn, roll) =>
            {
                Pose receiver = new(Plate.Pose.Position + new Vector(x, y, z), turn, 0.0, roll);
                Complex expected = Reaction.Between(Probe.Currents, receiver, currents, default, Probe.Wavenumber);
                Complex actual = new Mouth(Probe, receiver).Reaction(exchange.Cells(0), currents);

                // derived: the transfer's tolerance, of the sum of all magnitudes, which is what an error of each cell's field is a share of.
                double most = currents.Electric.ToArray().Sum(j => Math.Sqrt(j.SquaredMagnitude)) * Largest(receiver);
                Close.Absolute(0.0, (actual - expected).Magnitude / most, 1e-4);
            },
            iter: 40);
    }

    private static double Largest(Pose receiver)
    {
        FieldSample[] fields = new FieldSample[Plate.Panel.Cells.Length];
        RadiatedField.EvaluateMap(Probe.Currents.Posed(receiver), Probe.Wavenumber, Array.ConvertAll(Plate.Panel.Cells, cell => Plate.Pose.ToBench(cell.Centre)), fields);
        return fields.Max(field => Math.Sqrt(field.Electric.SquaredMagnitude));
    }
}
