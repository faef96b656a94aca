using System.Numerics;
using Hornbook.Physics.Panels.Edges;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Tests.Panels.Edges;

/// <summary>A dipole beside a metal sheet so large, its currents fading out so smoothly, that only one rim of it is seen; in the rim's frame as <see cref="HalfPlane"/>.</summary>
/// <param name="SourceAngle">Where the dipole is, from the sheet [rad].</param>
/// <param name="IsElectric">An electric dipole along the rim, else a magnetic one.</param>
/// <param name="CellsPerWavelength">How fine.</param>
internal sealed record HalfPlaneBench(double SourceAngle, bool IsElectric, double CellsPerWavelength)
{
    private const double Wavenumber = 220.0;
    private const double SourceDistance = 0.4;
    private const double ReceiverDistance = 0.35;

    // Whole out to 0.35 m from the middle of the rim, nothing from 0.7 m on.
    private const double Breadth = 0.7;

    private HalfPlane Exact => new(Wavenumber, At(SourceDistance, SourceAngle));

    private double ImageSign => IsElectric ? -1.0 : 1.0;

    /// <summary>Field over that without the sheet, exact.</summary>
    public Complex[] ExactRatios(double[] intoShadow) =>
        Array.ConvertAll(intoShadow, angle => Exact.Along(Receiver(angle), ImageSign) / Exact.Free(Receiver(angle)));

    /// <summary>The same from currents on cells, with or without the fringe current.</summary>
    public Complex[] Ratios(double[] intoShadow, bool withFringe)
    {
        Vector along = new(0.0, 0.0, 1.0);
        Vector source = ToOwn(At(SourceDistance, SourceAngle));
        ComplexVector moment = ComplexVector.Along(along, 1.0);
        CurrentSamples dipole = IsElectric ? new([source], [moment], [default]) : new([source], [default], [moment]);
        FieldSample[] sent = Fields(dipole, Array.ConvertAll(intoShadow, a => ToOwn(Receiver(a))));
        FieldSample[] scattered = Fields(SheetCurrents(dipole, withFringe), Array.ConvertAll(intoShadow, a => ToOwn(Receiver(a))));
        return [.. sent.Zip(scattered, (a, b) => 1.0 + (Component(b) / Component(a)))];
    }

    private Complex Component(FieldSample field) => IsElectric ? field.Electric.Z : field.Magnetic.Z;

    private static FieldSample[] Fields(CurrentSamples currents, Vector[] points)
    {
        FieldSample[] fields = new FieldSample[points.Length];
        RadiatedField.EvaluateMap(currents, Wavenumber, points, fields);
        return fields;
    }

    private CurrentSamples SheetCurrents(CurrentSamples dipole, bool withFringe)
    {
        double wavelength = 2.0 * Math.PI / Wavenumber;
        RectangularSurface sheet = new(Breadth, 2.0 * Breadth);
        Cell[] cells = [.. sheet.Cells(wavelength / CellsPerWavelength)];
        FieldSample[] arriving = Fields(dipole, Array.ConvertAll(cells, cell => cell.Centre));
        ComplexVector[] densities = Array.ConvertAll(arriving, field => ComplexVector.Cross(cells[0].Normal, field.Magnetic) * 2.0);
        if (withFringe)
        {
            AddFringe(densities, EdgeLinks.Of(cells, [.. sheet.Rims.Where(rim => rim.Foot(Vector.Zero)?.Inward.Y > 0.5)], wavelength), dipole);
        }

        ComplexVector[] moments = [.. cells.Zip(densities, (cell, j) => j * (cell.Area * Window(cell.Centre.Y + (0.5 * Breadth)) * Window(Math.Abs(cell.Centre.Z))))];
        return new CurrentSamples(Array.ConvertAll(cells, cell => cell.Centre), moments, new ComplexVector[cells.Length]);
    }

    private static void AddFringe(ComplexVector[] densities, EdgeLinks links, CurrentSamples dipole)
    {
        FieldSample[] atFeet = Fields(dipole, Array.ConvertAll(links.Feet, foot => foot.Place));
        FringeCurrent[] fringes = [.. links.Feet.Zip(atFeet, (foot, field) => new FringeCurrent(EdgeWave.Of(field, foot, SheetFace.Front, Wavenumber)))];
        foreach (EdgeLink link in links.Links)
        {
            densities[link.Cell] += OneCell.Of(fringes[link.Foot], link);
        }
    }

    private static double Window(double distance)
    {
        double cos = Math.Cos(0.5 * Math.PI * Math.Clamp((distance - (0.5 * Breadth)) / (0.5 * Breadth), 0.0, 1.0));
        return cos * cos;
    }

    private Vector Receiver(double intoShadow) => At(ReceiverDistance, SourceAngle + Math.PI + intoShadow);

    private static Vector At(double distance, double angle) => new(distance * Math.Cos(angle), distance * Math.Sin(angle), 0.0);

    private static Vector ToOwn(Vector v) => new(v.Y, v.X - (0.5 * Breadth), -v.Z);
}
