using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Exposure;

/// <summary>The power density all round a source, near zone included: its currents, fine enough for places close to the mouth.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class ExposureField
{
    // Sampled currents look smooth from about their spacing on. The antenna's own points serve from one wavelength (1e-5 of the
    // density), three times as many a side down to a quarter of a wavelength (3e-4).
    private const double CloseRefinement = 3.0;
    private const int Batch = 32;

    private readonly Lazy<CurrentSamples> _closeCurrents;
    private readonly Lazy<double> _mouthConductance;

    private ExposureField(Antenna antenna, double radiatedPower)
    {
        Antenna = antenna;
        RadiatedPower = radiatedPower;
        _closeCurrents = new Lazy<CurrentSamples>(CloseCurrents);
        _mouthConductance = new Lazy<double>(MouthConductance);
    }

    /// <summary>The antenna.</summary>
    public Antenna Antenna { get; }

    /// <summary>What is left of the incident power after reflection and ohmic loss [W].</summary>
    public double RadiatedPower { get; }

    /// <summary>Nothing is said of places closer to the mouth than this, a quarter of a wavelength [m].</summary>
    public double ClosestDistance => 0.25 * Antenna.Wavelength;

    /// <summary>|E|²/2η in the middle of the mouth itself, 2P/(AB g) with g = η Re Y of the mouth [W/m²].</summary>
    /// <remarks>
    /// Eq. exposure (2): the mean over the mouth is half of it, since TE10 goes as cos². A horn's mouth reflects next to nothing, and
    /// g is β/k of a guide as wide; at an open end the reflected wave stands in the mouth, and g is that of the end.
    /// </remarks>
    public double AtMouth => 2.0 * RadiatedPower / (Antenna.Shape.MouthWidth * Antenna.Shape.MouthHeight * _mouthConductance.Value);

    /// <summary>The field of a source.</summary>
    /// <param name="antenna">The antenna.</param>
    /// <param name="incidentPower">Power that its guide brings [W]; finite, ≥ 0. For exposure: the most that the source can give.</param>
    /// <exception cref="ArgumentOutOfRangeException">The power is negative or not finite.</exception>
    public static ExposureField Of(Antenna antenna, double incidentPower)
    {
        ArgumentNullException.ThrowIfNull(antenna);
        return new ExposureField(antenna, Require.NotNegative(incidentPower) * antenna.MismatchEfficiency * antenna.OhmicEfficiency);
    }

    /// <summary>Plane-wave equivalent power density at a place of the antenna's own frame [W/m²], Eq. exposure (1).</summary>
    /// <param name="place">Own frame [m]; at least <see cref="ClosestDistance"/> from the mouth.</param>
    public double Density(Vector place)
    {
        Span<double> density = stackalloc double[1];
        Densities([place], density);
        return density[0];
    }

    /// <summary>The same at many places.</summary>
    /// <param name="places">Own frame [m], length n; each at least <see cref="ClosestDistance"/> from the mouth.</param>
    /// <param name="densities">Filled [W/m²], length ≥ n.</param>
    public void Densities(ReadOnlySpan<Vector> places, Span<double> densities)
    {
        Span<FieldSample> fields = stackalloc FieldSample[Batch];
        for (int first = 0; first < places.Length; first += Batch)
        {
            ReadOnlySpan<Vector> some = places.Slice(first, Math.Min(Batch, places.Length - first));
            RadiatedField.Evaluate(CurrentsFor(some), Antenna.Wavenumber, some, fields);
            for (int i = 0; i < some.Length; i++)
            {
                densities[first + i] = RadiatedPower * PowerDensity.Equivalent(fields[i]);
            }
        }
    }

    /// <summary>Distance from a place of the own frame to the nearest point of the mouth [m].</summary>
    public double DistanceFromMouth(Vector place)
    {
        double aside = Math.Max(0.0, Math.Abs(place.Y) - (0.5 * Antenna.Shape.MouthWidth));
        double above = Math.Max(0.0, Math.Abs(place.Z) - (0.5 * Antenna.Shape.MouthHeight));
        return new Vector(place.X, aside, above).Length;
    }

    /// <summary>A distance from the centre of the mouth beyond which the density is certainly below a value, in every direction [m].</summary>
    /// <param name="density">[W/m²]; finite, &gt; 0.</param>
    /// <remarks>Eq. exposure (3): all currents in phase, at their least distance, with every near-zone term counted in full.</remarks>
    public double DistanceOfCertainty(double density)
    {
        Require.Positive(density);
        double k = Antenna.Wavenumber, moment = 0.0, radius = 0.0;
        for (int i = 0; i < Antenna.Currents.Count; i++)
        {
            radius = Math.Max(radius, Antenna.Currents.Points[i].Length);
            moment += (Constants.VacuumImpedance * Math.Sqrt(Antenna.Currents.Electric[i].SquaredMagnitude))
                + Math.Sqrt(Antenna.Currents.Magnetic[i].SquaredMagnitude);
        }

        double away = ClosestDistance;
        while (Bound(k * away) > density)
        {
            away *= 1.1;
        }

        return radius + away;

        double Bound(double kr)
        {
            double peak = k * k * moment / (4.0 * Math.PI * kr) * (1.0 + (2.0 / kr) + (2.0 / (kr * kr)));
            return RadiatedPower * 0.5 * peak * peak / Constants.VacuumImpedance;
        }
    }

    private double MouthConductance() => Antenna.Shape is OpenGuide
        ? OpenEndAdmittance.OverVacuum(Antenna.Shape.Guide, Antenna.Frequency).Real
        : new RectangularGuide(Antenna.Shape.MouthWidth, Antenna.Shape.MouthHeight).RelativePhaseConstant(Antenna.Frequency);

    // The norm from the directivity on the axis, which is known, rather than from another integral over the sphere.
    private CurrentSamples CloseCurrents()
    {
        CurrentSamples unit = MouthCurrents.Of(Antenna.Shape, Antenna.Frequency, CloseRefinement);
        double intensity = FarField.Intensity(unit, Antenna.Wavenumber, Vector.UnitX);
        return unit.Scaled(Math.Sqrt(Antenna.Directivity / (4.0 * Math.PI * intensity)));
    }

    private CurrentSamples CurrentsFor(ReadOnlySpan<Vector> places)
    {
        foreach (Vector place in places)
        {
            if (DistanceFromMouth(place) < Antenna.Wavelength)
            {
                return _closeCurrents.Value;
            }
        }

        return Antenna.Currents;
    }
}
