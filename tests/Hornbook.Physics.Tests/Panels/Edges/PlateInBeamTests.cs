using System.Numerics;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Exchange;
using Hornbook.Physics.Panels.Exchange.Legs;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Edges;

/// <summary>The solver's answer of a plate that covers half of a beam, against the exact half plane under each dipole of the beam.</summary>
public sealed class PlateInBeamTests
{
    private const double Frequency = 10.525e9;
    private const double Wavenumber = 2.0 * Math.PI * Frequency / Constants.SpeedOfLight;
    private const double SourceDistance = 0.3;
    private const double ReceiverDistance = 0.3;

    // So broad that its three other rims lie outside the beam, where the field is 30 dB down and more.
    private static readonly PosedPanel Plate = new(
        PreparedPanel.At(new Panel(new RectangularSurface(0.5, 1.0), new Metal()), Frequency), new Pose(new Vector(0.0, 0.25, 0.0)));

    [Theory]
    [Trait("Cost", "Slow")]
    // Macdonald's integral for every dipole; what the plate's other rims and the size of its cells leave, in decibels. With 60 mm of the beam covered the level falls to −26 dB.
    [InlineData(true, 0.0, 0.05)]
    [InlineData(false, 0.0, 0.05)]
    [InlineData(true, 0.06, 0.15)]
    [InlineData(false, 0.06, 0.1)]
    public void Half_a_plate_in_a_beam_shades_as_a_half_plane_does(bool isElectric, double covered, double toleranceDb)
    {
        double[] intoShadow = [-0.3, -0.15, 0.0, 0.15, 0.3, 0.45];
        Vector[] receivers = Array.ConvertAll(intoShadow, a => new Vector(ReceiverDistance * Math.Cos(a), ReceiverDistance * Math.Sin(a), 0.0));
        CurrentSamples beam = Beam(isElectric, covered);
        Complex[] open = Fields(beam, receivers, isElectric), thrown = Fields(Answer(beam), receivers, isElectric);
        for (int i = 0; i < receivers.Length; i++)
        {
            double exact = Exact(beam, receivers[i], isElectric).Magnitude, found = (open[i] + thrown[i]).Magnitude;
            Close.Absolute(2.0 * Decibels.FromRatio(exact), 2.0 * Decibels.FromRatio(found), toleranceDb);
        }
    }

    // Nine by nine dipoles along the rim with a Gaussian taper: a beam along x, its middle covered by so much of the plate.
    private static CurrentSamples Beam(bool isElectric, double covered)
    {
        const double Spacing = 0.015, Taper = 0.035;
        Vector[] places = [.. from i in Enumerable.Range(-4, 9) from j in Enumerable.Range(-4, 9) select new Vector(-SourceDistance, covered + (i * Spacing), j * Spacing)];
        ComplexVector[] moments = Array.ConvertAll(
            places, p => ComplexVector.Along(new Vector(0.0, 0.0, 1.0), Math.Exp(-0.5 * (((p.Y - covered) * (p.Y - covered)) + (p.Z * p.Z)) / (Taper * Taper))));
        ComplexVector[] none = new ComplexVector[places.Length];
        return isElectric ? new CurrentSamples(places, moments, none) : new CurrentSamples(places, none, moments);
    }

    private static CurrentSamples Answer(CurrentSamples beam)
    {
        PanelInPlace place = new(Plate, default);
        Arrivals arrivals = place.Nothing();
        Way.Between(Body.Of(beam.Points.ToArray(), Frame.Of(new Pose(new Vector(-SourceDistance, 0.0, 0.0)))), place, Wavenumber, WayUse.Light).Add(beam, arrivals);
        return place.Answer(arrivals);
    }

    private static Complex[] Fields(CurrentSamples currents, Vector[] points, bool isElectric)
    {
        FieldSample[] fields = new FieldSample[points.Length];
        RadiatedField.EvaluateMap(currents, Wavenumber, points, fields);
        return Array.ConvertAll(fields, field => isElectric ? field.Electric.Z : field.Magnetic.Z);
    }

    // E_z = (k² + ∂²/∂z²) G/jωε of an electric dipole, H_z = (k² + ∂²/∂z²) G/jωµ of a magnetic one (Harrington 1961, chapter 3, from memory).
    private static Complex Exact(CurrentSamples beam, Vector receiver, bool isElectric)
    {
        Complex scale = new(0.0, -(isElectric ? Constants.VacuumImpedance : 1.0 / Constants.VacuumImpedance) / Wavenumber);
        Complex sum = 0.0;
        for (int i = 0; i < beam.Count; i++)
        {
            Complex moment = isElectric ? beam.Electric[i].Z : beam.Magnetic[i].Z;
            sum += moment * scale * new HalfPlane(Wavenumber, InRimFrame(beam.Points[i])).Along(InRimFrame(receiver), isElectric ? -1.0 : 1.0);
        }

        return sum;
    }

    private static Vector InRimFrame(Vector bench) => new(bench.Y, -bench.X, bench.Z);
}
