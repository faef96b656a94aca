using MathNet.Numerics;

namespace Hornbook.Physics.Panels.Sheets.Wires;

/// <summary>What a wire alone asks of the field for a multipole, the part out of phase. Eq. wire-grids (4).</summary>
internal static class WireAnswers
{
    /// <summary>Y_n/J_n for electric fields along it, Y_n'/J_n' for magnetic ones, n from 0.</summary>
    /// <param name="argument">Ka, &gt; 0.</param>
    /// <param name="highest">The last n.</param>
    internal static (double[] Electric, double[] Magnetic) Of(double argument, int highest)
    {
        double[] j = new double[highest + 2], y = new double[highest + 2];
        for (int n = 0; n < j.Length; n++)
        {
            (j[n], y[n]) = (SpecialFunctions.BesselJ(n, argument), SpecialFunctions.BesselY(n, argument));
        }

        double[] electric = new double[highest + 1], magnetic = new double[highest + 1];
        for (int n = 0; n <= highest; n++)
        {
            (electric[n], magnetic[n]) = (y[n] / j[n], Slope(y, n) / Slope(j, n));
        }

        return (electric, magnetic);
    }

    private static double Slope(double[] bessel, int n) => n == 0 ? -bessel[1] : 0.5 * (bessel[n - 1] - bessel[n + 1]);
}
