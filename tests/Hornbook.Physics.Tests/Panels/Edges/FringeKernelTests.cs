using System.Numerics;
using CsCheck;
using Hornbook.Physics.Panels.Edges;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using MathNet.Numerics.Integration;
using Xunit;
using static Hornbook.Physics.Tests.Panels.Edges.FringeCurrentTests;

namespace Hornbook.Physics.Tests.Panels.Edges;

public sealed class FringeKernelTests
{
    [Fact]
    public void Sums_over_cells_to_the_integral_over_the_sheet() => Gen.Select(Waves, Gen.Double[5.0, 10.0], Gen.Int[1, 30]).Sample(
        (wave, perWavelength, last) =>
        {
            FringeCurrent fringe = Fringe(wave);
            double breadth = Wavelength / perWavelength, end = (last + 0.5) * breadth;
            Complex sum = 0.0, sumAlong = 0.0;
            for (int i = 0; i < last; i++)
            {
                double x = (i + 0.5) * breadth;
                ComplexVector mean = OneCell.Of(fringe, new EdgeLink(i, 0, x, breadth, 0.0, 1.0)) * (breadth * (1.0 - (x / end)));
                (sum, sumAlong) = (sum + mean.X, sumAlong + mean.Z);
            }

            // The same by Gauss-Legendre in √x, for a field that falls in a straight line to nothing at a cell's centre.
            Complex Integral(Func<ComplexVector, Complex> part) => GaussLegendreRule.ContourIntegrate(
                root => part(fringe.At(root * root)) * (2.0 * root * (1.0 - (root * root / end))), 0.0, Math.Sqrt(end), 64);
            double scale = Math.Sqrt(wave.Field.Magnetic.SquaredMagnitude) * Wavelength;
            // What the change of amplitude within a cell far from the rim leaves: at most 2.5e-3 in 20 000 cases.
            Close.Absolute(0.0, (sum - Integral(j => j.X)).Magnitude / scale, 3e-3);
            Close.Absolute(0.0, (sumAlong - Integral(j => j.Z)).Magnitude / scale, 3e-3);
        });

    [Fact]
    public void Gives_the_same_at_every_width() => Gen.Select(Waves, Gen.Double[0.3, 40.0], Gen.Double[-0.01, 0.01], Gen.Double[0.5, 2.0]).Sample(
        (wave, breadths, ahead, spreading) =>
        {
            FringeCurrent fringe = Fringe(wave);
            EdgeLink link = new(0, 0, breadths * 0.005, 0.005, ahead, spreading);
            ComplexVector narrow = OneCell.Of<Lanes128>(fringe, link);
            // Derived: the same sums in another order, so roundings only.
            foreach (ComplexVector wide in new[] { OneCell.Of<Lanes256>(fringe, link), OneCell.Of<Lanes512>(fringe, link), OneCell.Of(fringe, link) })
            {
                Close.Absolute(0.0, Math.Sqrt((wide + (narrow * -1.0)).SquaredMagnitude / narrow.SquaredMagnitude), 1e-11);
            }
        });

    [Fact]
    public void Gives_a_cell_the_current_weighted_with_its_tent() => Gen.Select(Waves, Gen.Double[2.1, 12.0]).Sample((wave, breadths) =>
    {
        FringeCurrent fringe = Fringe(wave);
        const double Breadth = 0.004;
        double centre = breadths * Breadth;
        ComplexVector found = OneCell.Of(fringe, new EdgeLink(0, 0, centre, Breadth, 0.0, 1.0));
        // Eq. edges (7) by a quadrature of its own, one side of the tent after the other.
        Complex Mean(Func<ComplexVector, Complex> part) => new[] { -1.0, 1.0 }.Aggregate(Complex.Zero, (sum, side) => sum + GaussLegendreRule.ContourIntegrate(
            share => part(fringe.At(centre + (side * share * Breadth))) * (1.0 - share), 0.0, 1.0, 32));
        double scale = Math.Sqrt(wave.Field.Magnetic.SquaredMagnitude);
        // Far cells take the amplitude in their middle for the whole of them: at most 9e-3 in 20 000 cases.
        Close.Absolute(0.0, (found.X - Mean(j => j.X)).Magnitude / scale, 1.2e-2);
        Close.Absolute(0.0, (found.Z - Mean(j => j.Z)).Magnitude / scale, 1.2e-2);
    });
}
