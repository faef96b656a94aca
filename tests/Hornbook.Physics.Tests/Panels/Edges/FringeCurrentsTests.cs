using System.Numerics;
using CsCheck;
using Hornbook.Physics.Panels.Edges;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Outlines.Shapes;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Tests.Panels.Outlines;
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
    [InlineData(0.5, false, 0.02)]
    [InlineData(1.0, true, 0.03)]
    [InlineData(1.0, false, 0.01)]
    [InlineData(2.0, true, 0.02)]
    [InlineData(2.0, false, 0.02)]
    public void Narrow_strips_scatter_what_the_method_of_moments_says(double width, bool alongStrip, double toleranceDb)
    {
        Complex[] exact = StripScattering.Far(width, alongStrip, Angles), found = Far(width, alongStrip);
        for (int i = 0; i < Angles.Length; i++)
        {
            Close.Absolute(0.0, 2.0 * Decibels.FromRatio((found[i] / exact[i]).Magnitude), toleranceDb);
        }
    }

    [Theory]
    [Trait("Cost", "Slow")]
    // Babinet 1837: the field of a slit with E along it is that of the strip in its place with E across it, by the method of moments; decibels of what is left,
    // as docs/physics/edges.md tells them.
    [InlineData(0.5, 0.2)]
    [InlineData(1.0, 0.03)]
    [InlineData(2.0, 0.01)]
    public void A_slit_along_the_field_passes_what_the_method_of_moments_says(double width, double toleranceDb)
    {
        // Straight on, both rims are at the edge of a shadow, where their radiation is infinite and only its sum is not.
        double[] angles = [0.05, 0.35, 0.8];
        Complex[] strip = StripScattering.Far(width, false, angles);
        for (int i = 0; i < angles.Length; i++)
        {
            // H_z = −∂A_x/∂y of the strip's current, E_z of the slit is η times that (Harrington 1961, chapter 3, from memory).
            double exact = Constants.VacuumImpedance * 0.25 * Wavenumber * Math.Cos(angles[i]) * Math.Sqrt(2.0 / (Math.PI * Wavenumber)) * strip[i].Magnitude;
            Close.Absolute(0.0, 2.0 * Decibels.FromRatio(BehindSlit(width, angles[i]).Magnitude / exact), toleranceDb);
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
    public void The_sides_of_a_slit_hear_each_other()
    {
        // A slit 20 mm wide and 100 mm high in a plate: the perpendiculars of its long sides lead to each other.
        FlatSurface plate = new(new RectangleShape(0.0, 0.0, 0.3, 0.3), new Piece(new RectangleShape(0.0, 0.0, 0.02, 0.1), IsSheet: false));
        EdgeLinks links = EdgeLinks.Of(plate.Cells(0.005), plate.Rims, 0.03);
        RimCrossing[] over = [.. links.Crossings.Where(crossing => crossing.ThroughAir && Math.Abs(links.Feet[crossing.To].Inward.Y) > 0.5)];
        // Derived: 100 mm in cells of 5 mm on either side.
        Assert.Equal(40, over.Length);
        Assert.All(over, crossing => Close.Relative(0.02, crossing.Distance, 1e-9));
    }

    [Fact]
    public void On_any_plate_they_are_finite() => SampleOutlines.Any.Sample(
        plate =>
        {
            Cell[] cells = [.. plate.Cells(0.02)];
            EdgeLinks links = EdgeLinks.Of(cells, plate.Rims, 0.1);
            FieldSample[] arriving = Array.ConvertAll(links.Feet, _ => new PlaneWave(1.0, 1.2, 1.0, 0.5).Field);
            ComplexVector[] densities = new ComplexVector[cells.Length];
            FringeCurrents.Add(links, links.Feet, arriving, SheetFace.Back, Wavenumber / 0.1, densities);
            Assert.All(densities, j => Assert.True(double.IsFinite(j.SquaredMagnitude)));
        },
        iter: 30);

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

    // Two half planes with a slit along own z between them: the exact radiation of each rim alone, and that of the currents which the rims call up in each other.
    private static Complex BehindSlit(double width, double angle)
    {
        Vector normal = new(1.0, 0.0, 0.0), half = new(0.0, 0.5 * width, 0.0), up = new(0.0, 0.0, 1.0);
        Rim[] rims = [new StraightRim(half + up, half - up), new StraightRim((half * -1.0) - up, (half * -1.0) + up)];
        Cell[] cells = [new Cell(half * 1.2, normal, new Vector(0.0, 1.0, 0.0), 0.01), new Cell(half * -1.2, normal, new Vector(0.0, 1.0, 0.0), 0.01)];
        EdgeLinks links = EdgeLinks.Of(cells, rims, 1.0);
        ComplexVector electric = ComplexVector.Along(up, 1.0);
        FieldSample wave = new(electric, ComplexVector.Cross(normal, electric) * (-1.0 / Constants.VacuumImpedance));
        EdgeWave[] arriving = Array.ConvertAll(links.Feet, foot => EdgeWave.Of(wave, foot, SheetFace.Front, Wavenumber));
        EdgeWave[] exchanged = RimExchange.Between(links, links.Feet, arriving, SheetFace.Front, throughAir: true);
        Complex sum = 0.0;
        for (int foot = 0; foot < links.Feet.Length; foot++)
        {
            int i = foot;
            // z of a rim's frame, inward × normal, is −z on the left and z on the right.
            double side = links.Feet[i].Inward.Y, azimuth = Math.Atan2(-Math.Cos(angle), side * Math.Sin(angle)) + (2.0 * Math.PI);
            FringeCurrent current = new(exchanged[i]);
            Complex called = -side * EdgeRadiation.Of(0.5 * Math.PI, Wavenumber, azimuth, default, x => InRimFrame(current.At(x), exchanged[i])).Electric;
            Complex alone = EdgeRadiation.Diffraction(Wavenumber, azimuth, 0.5 * Math.PI, -1.0);
            sum += (alone + called) * Complex.FromPolarCoordinates(1.0, Wavenumber * side * 0.5 * width * Math.Sin(angle));
        }

        return sum;
    }

    private static ComplexVector InRimFrame(ComplexVector j, EdgeWave wave) => new(j.Component(wave.Inward), Complex.Zero, j.Component(wave.Along));
}
