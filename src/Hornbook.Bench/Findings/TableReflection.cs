using Hornbook.Physics;
using Hornbook.Physics.Media;

namespace Hornbook.Bench.Findings;

/// <summary>How much of a wave a wooden table top returns, at the thickness that returns the most.</summary>
internal static class TableReflection
{
    /// <summary>Relative permittivity of wood, the same from 1 MHz to 100 GHz; its loss makes it return less, not more.</summary>
    private static readonly double Wood = Dielectrics.Find("wood")!.RelativePermittivity(10e9).Real;

    /// <summary>Amplitude returned over amplitude that falls on the table half way between two ends [-].</summary>
    /// <param name="source">How the source stands; the tilt of its electric field decides.</param>
    /// <param name="receiver">How the receiver stands.</param>
    /// <remarks>
    /// Fresnel's coefficients r of one face [Balanis2016]; two faces that work together return 2r/(1+r²). Upright fields meet
    /// Brewster's angle near 35° above the table and are hardly returned; level ones always are.
    /// </remarks>
    internal static double OfWood(Pose source, Pose receiver)
    {
        Vector along = receiver.Position - source.Position;
        double rise = source.Position.Z + receiver.Position.Z;
        double run = Math.Sqrt((along.X * along.X) + (along.Y * along.Y));
        double cosine = rise / Math.Sqrt((rise * rise) + (run * run));
        double refracted = Math.Sqrt(Wood - 1.0 + (cosine * cosine));
        double upright = BothFaces(((Wood * cosine) - refracted) / ((Wood * cosine) + refracted));
        double level = BothFaces((cosine - refracted) / (cosine + refracted));
        double share = Math.Clamp(source.Up.Z * source.Up.Z, 0.0, 1.0);
        return Math.Sqrt((share * upright * upright) + ((1.0 - share) * level * level));
    }

    private static double BothFaces(double face) => Math.Abs(2.0 * face / (1.0 + (face * face)));
}
