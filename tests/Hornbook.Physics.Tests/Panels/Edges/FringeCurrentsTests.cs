using System.Numerics;
using Hornbook.Physics.Panels.Edges;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Edges;

public sealed class FringeCurrentsTests
{
    private const double Wavenumber = 2.0 * Math.PI;
    private static readonly double[] Angles = [0.0, 0.35, 0.8, 1.3];

    [Theory]
    [Trait("Cost", "Slow")]
    // The method of moments; decibels of what is left, as docs/physics/edges.md tells them, at 40 cells a wavelength.
    [InlineData(0.5, true, 0.07)]
    [InlineData(0.5, false, 0.2)]
    [InlineData(1.0, true, 0.05)]
    [InlineData(1.0, false, 0.06)]
    [InlineData(2.0, true, 0.05)]
    [InlineData(2.0, false, 0.05)]
    public void Narrow_strips_scatter_what_the_method_of_moments_says(double width, bool alongStrip, double toleranceDb)
    {
        Complex[] exact = StripScattering.Far(width, alongStrip, Angles), found = Far(width, alongStrip);
        for (int i = 0; i < Angles.Length; i++)
        {
            Close.Absolute(0.0, 2.0 * Decibels.FromRatio((found[i] / exact[i]).Magnitude), toleranceDb);
        }
    }

    [Fact]
    public void A_strip_knows_that_its_rims_face_each_other()
    {
        RectangularSurface sheet = new(0.05, 0.02);
        EdgeLinks links = EdgeLinks.Of(sheet.Cells(0.005), sheet.Rims, 0.03);
        // Derived: 10 by 4 cells; each foot has one opposite, as far away as the sheet is broad there.
        Assert.Equal(2 * (10 + 4), links.Crossings.Length);
        foreach (RimCrossing crossing in links.Crossings)
        {
            bool isAcross = Math.Abs(links.Feet[crossing.To].Inward.Y) > 0.5;
            Close.Relative(isAcross ? 0.05 : 0.02, crossing.Distance, 1e-9);
            Close.Absolute(0.0, (links.Feet[crossing.From].Inward + links.Feet[crossing.To].Inward).Length, 1e-9);
        }
    }

    [Fact]
    public void Without_a_field_there_is_none()
    {
        RectangularSurface sheet = new(1.0, 1.0);
        EdgeLinks links = EdgeLinks.Of(sheet.Cells(0.2), sheet.Rims, 1.0);
        ComplexVector[] densities = new ComplexVector[25];
        FringeCurrents.Add(links, links.Feet, new FieldSample[links.Feet.Length], SheetFace.Back, Wavenumber, densities);
        Assert.All(densities, j => Assert.Equal(0.0, j.SquaredMagnitude));
    }

    // One row of the cells of a strip along own z, lit on its front face by a wave along −x, with its own two long rims only.
    private static Complex[] Far(double width, bool alongStrip)
    {
        ComplexVector electric = alongStrip ? new(0.0, 0.0, 1.0) : new(0.0, 1.0, 0.0);
        Vector normal = new(1.0, 0.0, 0.0);
        FieldSample wave = new(electric, ComplexVector.Cross(normal, electric) * (-1.0 / Constants.VacuumImpedance));
        RectangularSurface sheet = new(width, 1.0 / 40.0);
        Cell[] cells = [.. sheet.Cells(1.0 / 40.0)];
        EdgeLinks links = EdgeLinks.Of(cells, [.. sheet.Rims.Where(rim => Math.Abs(rim.Foot(Vector.Zero)!.Value.Inward.Y) > 0.5)], 1.0);
        ComplexVector[] densities = Array.ConvertAll(cells, _ => ComplexVector.Cross(normal, wave.Magnetic) * 2.0);
        FringeCurrents.Add(links, links.Feet, Array.ConvertAll(links.Feet, _ => wave), SheetFace.Front, Wavenumber, densities);
        double breadth = width / cells.Length;
        return Array.ConvertAll(Angles, a => cells.Zip(
            densities, (cell, j) => (alongStrip ? j.Z : j.Y) * Complex.FromPolarCoordinates(breadth, Wavenumber * cell.Centre.Y * Math.Sin(a))).Aggregate((s, t) => s + t));
    }
}
