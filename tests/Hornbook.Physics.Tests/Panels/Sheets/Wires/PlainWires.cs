using Hornbook.Physics.Panels.Sheets;
using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Tests.Panels.Sheets.Wires;

/// <summary>A row of wires as it is usually written: cylinder waves about each wire, turning both ways round it, that meet those of all others; complex and without symmetries.</summary>
/// <remarks>b_l = D_l ((−j)ˡ e^{−jlθ} + Σ S_{n−l} b_n), D_l = −J_l/H_l for a field that is zero on the wires, −J_l'/H_l' for one whose slope is.</remarks>
internal sealed class PlainWires
{
    private const int Highest = 5;
    private const int Waves = (2 * Highest) + 1;

    private readonly Complex[] _sums;
    private readonly double _argument;
    private readonly Complex _turn;
    private readonly double _density;

    /// <summary>Wires of a period and a diameter in wavelengths, for a wave with these direction cosines.</summary>
    internal PlainWires(double period, double diameter, double across, double along)
    {
        double transverse = Math.Sqrt(1.0 - (along * along)), normal = Math.Sqrt(1.0 - (across * across) - (along * along));
        _sums = SourceBySource.Sums(2 * Highest, period, across, transverse);
        _argument = Math.PI * diameter * transverse;
        _turn = new Complex(across, normal) / transverse;
        _density = 1.0 / (Math.PI * period * normal);
    }

    /// <summary>R and T of the field along the wires, electric or magnetic.</summary>
    internal SheetResponse Of(bool isMagnetic)
    {
        Matrix<Complex> equations = Matrix<Complex>.Build.DenseIdentity(Waves);
        Vector<Complex> incident = Vector<Complex>.Build.Dense(Waves);
        for (int l = -Highest; l <= Highest; l++)
        {
            Complex own = Answer(Math.Abs(l), isMagnetic);
            incident[l + Highest] = own * Complex.Pow(Complex.ImaginaryOne * _turn, -l);
            for (int n = -Highest; n <= Highest; n++)
            {
                double sign = n < l && (n - l) % 2 != 0 ? -1.0 : 1.0;
                equations[l + Highest, n + Highest] -= own * sign * _sums[Math.Abs(n - l)];
            }
        }

        Vector<Complex> sent = equations.Solve(incident) * _density;
        (Complex reflected, Complex passed) = (Complex.Zero, Complex.One);
        for (int n = -Highest; n <= Highest; n++)
        {
            reflected += sent[n + Highest] * Complex.Pow(Complex.ImaginaryOne / _turn, n);
            passed += sent[n + Highest] * Complex.Pow(Complex.ImaginaryOne * _turn, n);
        }

        return new SheetResponse(reflected, passed);
    }

    private Complex Answer(int n, bool isMagnetic)
    {
        Complex outgoing = !isMagnetic ? Hankel(n) : n == 0 ? -Hankel(1) : 0.5 * (Hankel(n - 1) - Hankel(n + 1));
        return -outgoing.Real / outgoing;
    }

    private Complex Hankel(int n) => new(SpecialFunctions.BesselJ(n, _argument), -SpecialFunctions.BesselY(n, _argument));
}
