namespace Hornbook.Physics.Exposure;

/// <summary>What an eye or a hand at the mouth would get.</summary>
/// <param name="Peak">Largest power density at the mouth or in front of it [W/m²].</param>
/// <param name="PeakPlace">Where, in the antenna's own frame [m].</param>
/// <param name="Average">Largest mean over a square of 4 cm² across the axis [W/m²].</param>
/// <param name="AveragePlace">Centre of that square, in the antenna's own frame [m].</param>
/// <param name="SurfaceEstimate">The textbook value 4P/A with P the radiated power [W/m²] [Oet65]; an open end near its cut-off exceeds it.</param>
public sealed record MouthExposure(double Peak, Vector PeakPlace, double Average, Vector AveragePlace, double SurfaceEstimate)
{
    private const double Side = 0.02; // of the 4 cm² of [Icnirp2020] [m]

    /// <summary>Takes the field in the mouth, and searches planes from a quarter of a wavelength in front of it to one wavelength.</summary>
    /// <param name="field">The field of the source at its worst-case power.</param>
    public static MouthExposure Of(ExposureField field)
    {
        ArgumentNullException.ThrowIfNull(field);
        int cells = 2 * (int)Math.Max(3.0, Math.Ceiling(4.0 * Side / field.Antenna.Wavelength));
        MouthExposure worst = InTheMouth(field);
        for (int quarters = 1; quarters <= 4; quarters++)
        {
            worst = worst.OrIn(DensityPlane.Across(field, 0.25 * quarters * field.Antenna.Wavelength, Side / cells, cells));
        }

        return worst;
    }

    // TE10 in the mouth: cos² across, uniform up; both means over what the square holds of the mouth.
    private static MouthExposure InTheMouth(ExposureField field)
    {
        double width = field.Antenna.Shape.MouthWidth, height = field.Antenna.Shape.MouthHeight;
        double across = Math.Min(Side, width);
        double squaredCosine = (0.5 * across) + (0.5 * width / Math.PI * Math.Sin(Math.PI * across / width));
        double mean = field.AtMouth * squaredCosine * Math.Min(Side, height) / (Side * Side);
        return new MouthExposure(
            field.AtMouth, Vector.Zero, mean, Vector.Zero, ApertureFormulas.SurfaceDensity(field.RadiatedPower, width * height));
    }

    private MouthExposure OrIn(DensityPlane plane)
    {
        (double peak, Vector peakPlace) = plane.Largest(1);
        (double average, Vector averagePlace) = plane.Largest(plane.CellsPerSide);
        MouthExposure higher = peak > Peak ? this with { Peak = peak, PeakPlace = peakPlace } : this;
        return average > Average ? higher with { Average = average, AveragePlace = averagePlace } : higher;
    }
}
