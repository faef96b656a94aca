using CsCheck;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Sheets.Strips;

public sealed class StripCurrentsTests
{
    private const double Frequency = 10.525e9;
    private const double Wavelength = Constants.SpeedOfLight / Frequency;

    private static readonly Gen<(double Angle, double Azimuth)> Anywhere = Gen.Select(Gen.Double[0.0, 1.57], Gen.Double[-Math.PI, Math.PI]);

    [Fact]
    public void Short_sums_give_what_long_ones_do() => Gen.Select(Gen.Double[0.05, 0.95], Gen.Double[0.1, 0.8], Anywhere).Sample(
        (period, share, direction) =>
        {
            double p = period * Wavelength;
            TangentialMatrix quick = SheetPower.Asked(new StripGrid(p, share * p).Solved(Frequency), SheetFace.Back, direction).Reflection;
            TangentialMatrix plain = new PlainStripSums(share).Reflection(period, SheetPower.Cosines(direction));
            // Independent method: order by order up to q = 2000. What is left is its own: up to q = 16 000 it comes within 4e-9.
            Close.Absolute(0.0, SheetPower.Difference(quick, plain), 1e-6);
        },
        iter: 20);

    [Theory]
    // The page on strip grids: one wave, three, five and nine put back; the worst of many directions was 2e-8, 5e-8, 4e-9 and 6e-7.
    [InlineData(0.18, 0.5, 1e-8)]
    [InlineData(0.18, 0.05, 1e-8)]
    [InlineData(0.18, 0.95, 1e-7)]
    [InlineData(0.399, 0.8, 1e-7)]
    [InlineData(0.401, 0.5, 1e-7)]
    [InlineData(0.799, 0.8, 2e-7)]
    [InlineData(0.9, 0.5, 2e-7)]
    [InlineData(1.5, 0.5, 2e-6)]
    public void What_is_read_from_the_table_is_what_the_equations_say(double period, double share, double most)
    {
        StripGrid grid = new(period * Wavelength, share * period * Wavelength);
        ISheetResponse table = grid.At(Frequency);
        Anywhere.Sample(
            direction =>
            {
                double sine = Math.Sin(direction.Angle);
                (double sin, double cos) = Math.SinCos(direction.Azimuth);
                TangentialMatrix read = table.Arriving(SheetFace.Back, sine * cos, sine * sin).Reflection;
                // Independent method: the equations solved for this direction.
                Close.Absolute(0.0, SheetPower.Difference(SheetPower.Asked(grid.Solved(Frequency), SheetFace.Back, direction).Reflection, read), most);
            },
            iter: 200);
    }

    [Fact]
    public void A_table_is_made_once_for_a_grid_and_a_frequency() =>
        Assert.Same(new StripGrid(5e-3, 2e-3).At(Frequency), new StripGrid(5e-3, 2e-3).At(Frequency));

    [Fact]
    public void Asking_allocates_nothing()
    {
        ISheetResponse[] responses = [new StripGrid(5e-3, 2.5e-3).At(Frequency), new StripGrid(20e-3, 10e-3).At(Frequency)];
        foreach (ISheetResponse response in responses)
        {
            response.Arriving(SheetFace.Back, 0.1, 0.2);
            long before = GC.GetAllocatedBytesForCurrentThread();
            for (int i = 0; i < 100; i++)
            {
                response.Arriving(SheetFace.Back, 0.001 * i, 0.2);
            }

            // Law of the contract.
            Assert.Equal(0L, GC.GetAllocatedBytesForCurrentThread() - before);
        }
    }
}
