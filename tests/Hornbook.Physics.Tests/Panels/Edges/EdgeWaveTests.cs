using CsCheck;
using Hornbook.Physics.Panels.Edges;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Edges;

public sealed class EdgeWaveTests
{
    private const double Wavenumber = 220.0;
    private static readonly RimFoot Foot = new(Vector.Zero, new Vector(1.0, 0.0, 0.0), new Vector(0.0, 1.0, 0.0), 1.0);

    [Fact]
    public void Knows_where_a_plane_wave_comes_from() =>
        Gen.Select(Gen.Double[0.0, Math.PI], Gen.Double[0.2, 2.9], Gen.Double[0.1, 1.0]).Sample((arrival, beta, amplitude) =>
        {
            PlaneWave plane = new(arrival, beta, amplitude, 0.3);
            EdgeWave wave = EdgeWave.Of(plane.Field, Foot, SheetFace.Front, Wavenumber);
            // The direction that the wave was made with.
            Close.Absolute(Math.Cos(arrival), wave.CosArrival, 1e-9);
            Close.Relative(Wavenumber * Math.Sin(beta), wave.AcrossWavenumber, 1e-9);
            Close.Absolute(Wavenumber * Math.Cos(beta), wave.AlongWavenumber, 1e-9 * Wavenumber);
            Close.Absolute(0.0, (plane.Field.Electric.Z - wave.ElectricAlong).Magnitude, 1e-12);
        });

    [Fact]
    public void On_the_back_face_it_drives_the_mirrored_current() =>
        Gen.Select(Gen.Double[0.2, 2.9], Gen.Double[0.3, 2.8], Gen.Double[0.1, 1.0], Gen.Double[-0.01, 0.01]).Sample((arrival, beta, amplitude, ahead) =>
        {
            // Mirrored at the sheet: E keeps its tangential part, H its normal one, so a tangential current stays as it is.
            FieldSample field = new PlaneWave(arrival, beta, amplitude, 0.3).Field;
            ComplexVector e = field.Electric, h = field.Magnetic;
            FieldSample mirrored = new(new ComplexVector(e.X, -e.Y, e.Z), new ComplexVector(-h.X, h.Y, -h.Z));
            EdgeLink link = new(0, 0, 0.004, 0.005, ahead, 1.0);
            ComplexVector front = OneCell.Of(new FringeCurrent(EdgeWave.Of(field, Foot, SheetFace.Front, Wavenumber)), link);
            ComplexVector back = OneCell.Of(new FringeCurrent(EdgeWave.Of(mirrored, Foot, SheetFace.Back, Wavenumber)), link);
            Close.Absolute(0.0, Math.Sqrt((front + (back * -1.0)).SquaredMagnitude / front.SquaredMagnitude), 1e-9);
        });

    [Fact]
    public void A_foot_ahead_along_the_rim_has_the_phase_that_the_wave_has_there() =>
        Gen.Select(Gen.Double[0.2, 2.9], Gen.Double[0.3, 2.8], Gen.Double[-0.01, 0.01]).Sample((arrival, beta, ahead) =>
        {
            PlaneWave plane = new(arrival, beta, 1.0, 0.3);
            FringeCurrent fringe = new(EdgeWave.Of(plane.Field, Foot, SheetFace.Front, Wavenumber));
            ComplexVector here = OneCell.Of(fringe, new EdgeLink(0, 0, 0.004, 0.005, 0.0, 1.0)), there = OneCell.Of(fringe, new EdgeLink(0, 0, 0.004, 0.005, ahead, 1.0));
            // e^{−jk s·r} of the plane wave along z = inward × front normal.
            double phase = -Wavenumber * plane.Direction.Z * ahead;
            ComplexVector expected = here * System.Numerics.Complex.FromPolarCoordinates(1.0, phase);
            Close.Absolute(0.0, Math.Sqrt((there + (expected * -1.0)).SquaredMagnitude / here.SquaredMagnitude), 1e-9);
        });

    [Theory]
    // Along the rim, along the sheet from either side, from above, and a wave that is none.
    [InlineData(0.0, 0.0, 1.0, 1.0)]
    [InlineData(1.0, 0.0, 0.0, 1.0)]
    [InlineData(-1.0, 0.0, 0.0, 1.0)]
    [InlineData(0.0, -1.0, 0.0, 1.0)]
    [InlineData(0.0, -1.0, 0.0, 0.0)]
    public void Special_directions_give_bounded_currents(double x, double y, double z, double amplitude)
    {
        Vector direction = new(x, y, z);
        ComplexVector electric = ComplexVector.Along(Vector.Cross(direction, new Vector(0.6, 0.48, 0.64)).Unit, amplitude);
        FieldSample field = new(electric, ComplexVector.Cross(direction, electric) * (1.0 / Constants.VacuumImpedance));
        ComplexVector mean = OneCell.Of(new FringeCurrent(EdgeWave.Of(field, Foot, SheetFace.Front, Wavenumber)), new EdgeLink(0, 0, 0.0025, 0.005, 0.0, 1.0));
        // Derived: 2 n×H of a wave of 1 V/m is 2/η; near the rim the fringe current is of that order.
        Assert.InRange(Math.Sqrt(mean.SquaredMagnitude) * Constants.VacuumImpedance, 0.0, 4.0 * amplitude);
    }
}
