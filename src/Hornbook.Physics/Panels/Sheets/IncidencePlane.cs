using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>The plane of a wave's incidence on a sheet that is the same in every direction along it.</summary>
internal static class IncidencePlane
{
    // Where a wave grazes exactly, some sheets would be nothing over nothing.
    private const double SmallestCosine = 1e-9;

    /// <summary>cos θ of a wave with these direction cosines along the sheet, kept off 0.</summary>
    internal static double Cosine(double across, double along) =>
        Math.Max(Math.Sqrt(Math.Max(1.0 - (across * across) - (along * along), 0.0)), SmallestCosine);

    /// <summary>What is made of a tangential field of any direction.</summary>
    /// <param name="beside">What is made of a field across the plane of incidence.</param>
    /// <param name="within">What is made of a field within it; the same at right angles.</param>
    /// <param name="across">Direction cosine of the wave along the panel's own y.</param>
    /// <param name="along">Along its own z.</param>
    internal static TangentialMatrix Matrix(Complex beside, Complex within, double across, double along)
    {
        double squaredSine = (across * across) + (along * along);
        if (squaredSine == 0.0)
        {
            return TangentialMatrix.Identity * beside;
        }

        Complex difference = (within - beside) / squaredSine;
        Complex mixed = difference * (across * along);
        return new TangentialMatrix(beside + (difference * (across * across)), mixed, mixed, beside + (difference * (along * along)));
    }
}
