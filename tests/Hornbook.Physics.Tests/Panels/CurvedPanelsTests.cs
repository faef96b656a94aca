using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Edges;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Outlines.Shapes;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;
using static Hornbook.Physics.Tests.Panels.PanelBenches;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Tests.Panels;

/// <summary>Bent plates and dishes, through the solver.</summary>
public sealed class CurvedPanelsTests
{
    private const double HugeRadius = 1e4;

    private static readonly PanelSurface Plate = new RectangularSurface(0.15, 0.12);

    // With a slit of 20 mm along own z.
    private static readonly PanelSurface Slit = new FlatSurface(new RectangleShape(0.0, 0.0, 0.2, 0.14), Piece.Removed(new RectangleShape(0.0, 0.0, 0.02, 0.1)));

    [Theory]
    [InlineData(BendAxis.Y, SheetFace.Front, false)]
    [InlineData(BendAxis.Z, SheetFace.Back, false)]
    [InlineData(BendAxis.Y, SheetFace.Back, true)]
    [InlineData(BendAxis.Z, SheetFace.Front, true)]
    public void Hardly_bent_a_plate_does_what_the_flat_one_does(BendAxis axis, SheetFace hollow, bool isSlit)
    {
        PanelSurface blank = isSlit ? Slit : Plate;
        BentSurface bent = new(blank, HugeRadius, axis, hollow);
        foreach (Pose receiver in new Pose[] { new(new Vector(0.8, 0.02, 0.01), turn: Math.PI), new(new Vector(0.1, 0.5, 0.0), turn: -1.0) })
        {
            // derived: an edge 0.1 m from the middle is bent by 0.5 µm, and 2k times that is 2.2e-4.
            Close.Absolute(0.0, (Linked(bent, receiver) - Linked(blank, receiver)).Magnitude / Linked(blank, receiver).Magnitude, 3e-4);
        }
    }

    [Fact]
    public void The_wave_through_a_slit_of_a_bent_plate_is_followed_as_in_a_flat_one()
    {
        EdgeLinks flat = Prepared(Slit).Edges!, bent = Prepared(new BentSurface(Slit, 0.4, BendAxis.Z, SheetFace.Front)).Edges!;
        Assert.Contains(flat.Crossings, crossing => crossing.ThroughAir);
        Assert.Equal(flat.Crossings.Count(crossing => crossing.ThroughAir), bent.Crossings.Count(crossing => crossing.ThroughAir));
        // derived: from one long side the other lies R sin(W/R) away in the plane that touches the sheet here.
        Assert.All(
            bent.Crossings.Where(crossing => crossing is { ThroughAir: true, Distance: < 0.05 }), crossing => Close.Relative(0.4 * Math.Sin(0.05), crossing.Distance, 1e-9));
    }

    [Fact]
    public void A_dish_gathers_the_wave_of_a_far_source_at_its_focus()
    {
        const double FocalLength = 0.15, Wavelength = Constants.SpeedOfLight / Frequency;
        Pose dish = new(new Vector(3.0, 0.0, 0.0), turn: Math.PI);
        Illumination lit = Illumination.Of(LargeHorn, AtOrigin, [new PosedPanel(Prepared(new DishSurface(0.3, FocalLength)), dish)]);
        Vector[] axis = [.. Enumerable.Range(0, 101).Select(i => dish.ToBench(new Vector(0.08 + (i * 0.0015), 0.0, 0.0)))];
        FieldSample[] fields = new FieldSample[axis.Length];
        lit.Field(axis, fields);
        int strongest = Enumerable.Range(0, axis.Length).MaxBy(i => fields[i].Electric.SquaredMagnitude);

        // Law of mirrors: 1/(1/f − 1/r); ripple of half a wavelength with what arrives direct.
        Close.Absolute(1.0 / ((1.0 / FocalLength) - (1.0 / 3.0)), dish.ToOwn(axis[strongest]).X, 0.5 * Wavelength);
    }

    private static Complex Linked(PanelSurface surface, Pose receiver) =>
        Illumination.Of(LargeHorn, AtOrigin, [new PosedPanel(Prepared(surface), new Pose(new Vector(0.4, 0.0, 0.0), turn: 0.2))]).Link(Probe, receiver);

    private static PreparedPanel Prepared(PanelSurface surface) => PreparedPanel.At(new Panel(surface, new Metal()), Frequency);
}
