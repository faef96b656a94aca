using MathNet.Numerics.LinearAlgebra;

namespace Hornbook.Physics.Panels.Sheets.Wires;

/// <summary>The multipoles of the wires of a grid, with the waves that may travel left out, and what they do to these waves: real and smooth.</summary>
/// <remarks>
/// Round wires keep the electric and the magnetic field along them apart, and the mirror in their plane keeps apart what is even and odd there; a grid without its travelling
/// waves loses nothing, so that all is real. Eq. wire-grids (2) to (9).
/// </remarks>
internal sealed class WireEquations
{
    /// <summary>Multipoles up to cos 8φ and sin 8φ.</summary>
    internal const int Usual = 8;

    // As with strips: waves left in must die out well for every direction.
    private const double Margin = 1.5;

    private readonly double _share;
    private readonly int _highest;

    /// <summary>Equations for a grid at a frequency.</summary>
    /// <param name="period">p/λ [-].</param>
    /// <param name="share">d/p [-].</param>
    /// <param name="highest">The highest multipole, up to 12.</param>
    internal WireEquations(double period, double share, int highest = Usual)
    {
        (Period, _share, _highest) = (period, share, highest);
        Travelling = (int)Math.Floor(period * (1.0 + Margin));
    }

    /// <summary>p/λ.</summary>
    internal double Period { get; }

    /// <summary>The waves that may travel for some direction are those of the orders −n … n.</summary>
    internal int Travelling { get; }

    /// <summary>How many orders may travel, 2n + 1.</summary>
    internal int Waves => (2 * Travelling) + 1;

    /// <summary>d/p.</summary>
    internal double Share => _share;

    /// <summary>What the wires make the waves that may travel do to each other, for each kind of field: symmetric, in the order of <see cref="WireField"/>.</summary>
    /// <param name="across">k_u/k of order 0, ≥ 0.</param>
    /// <param name="squaredAlong">(k_v/k)²; &lt; 1.</param>
    internal Matrix<double>[] Exchange(double across, double squaredAlong)
    {
        double wavenumber = Period * Math.Sqrt(1.0 - squaredAlong), shift = Period * across;
        RowSums sums = new(wavenumber, shift, Travelling, 2 * _highest);
        (double[] electric, double[] magnetic) = WireAnswers.Of(Math.PI * wavenumber * _share, _highest);
        Matrix<double> even = Seen(wavenumber * wavenumber, shift, isOdd: false), odd = Seen(wavenumber * wavenumber, shift, isOdd: true);
        return
        [
            .. from kind in Enum.GetValues<WireField>()
               let isOdd = kind is WireField.ElectricOdd or WireField.MagneticOdd
               let own = kind is WireField.MagneticEven or WireField.MagneticOdd ? magnetic : electric
               let seen = isOdd ? odd : even
               select seen.TransposeThisAndMultiply(Multipoles(sums, own, wavenumber, isOdd).Solve(seen))
        ];
    }

    private Matrix<double> Multipoles(RowSums sums, double[] own, double wavenumber, bool isOdd)
    {
        int first = isOdd ? 1 : 0, size = _highest + 1 - first;
        double sign = isOdd ? -1.0 : 1.0;
        return Matrix<double>.Build.Dense(size, size, (i, j) =>
        {
            (int a, int b) = (i + first, j + first);
            double others = (Math.Pow(wavenumber, 2 * Math.Min(a, b)) * sums[Math.Abs(a - b)]) + (sign * sums[a + b]);
            double alone = a == b ? Math.PI * own[a] * Math.Pow(wavenumber, 2 * a) * (a == 0 ? 2.0 : 1.0) : 0.0;
            return (alone + others) / (2.0 * Math.PI);
        });
    }

    // What each wave has of each multipole: Chebyshev's polynomials of the first kind where it is even, of the second where it is odd.
    private Matrix<double> Seen(double squared, double shift, bool isOdd)
    {
        Matrix<double> seen = Matrix<double>.Build.Dense(isOdd ? _highest : _highest + 1, Waves);
        for (int wave = 0; wave < Waves; wave++)
        {
            double b = shift + wave - Travelling;
            (double polynomial, double next) = (1.0, isOdd ? 2.0 * b : b);
            for (int n = 0; n < seen.RowCount; n++)
            {
                seen[n, wave] = polynomial;
                (polynomial, next) = (next, (2.0 * b * next) - (squared * polynomial));
            }
        }

        return seen;
    }
}
