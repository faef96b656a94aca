using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Radiation;

/// <summary>Cosine and sine of a phase counted in turns: taking whole turns away is exact, so a phase of a thousand turns costs no digits.</summary>
internal static class Turns
{
    // sin(πy/2) = 2 Σ (−1)ⁿ J₂ₙ₊₁(π/2) T₂ₙ₊₁(y) (Jacobi and Anger; [AbramowitzStegun1964] ch. 9), cut after eight terms and
    // written in powers of x = y/4. The first term left out is 2 J₁₇(π/2) = 9e-17.
    private const double C1 = 6.28318530717958;
    private const double C3 = -41.34170224039508;
    private const double C5 = 81.60524927502529;
    private const double C7 = -76.70585964739314;
    private const double C9 = 42.05868830240238;
    private const double C11 = -15.094471554054136;
    private const double C13 = 3.8169967608105932;
    private const double C15 = -0.6909330342703184;

    // The same cut after five terms: 2 J₁₁(π/2) = 3e-9 is left out, a twentieth of a last place of a float.
    private const double S1 = 6.28318515961116;
    private const double S3 = -41.34165492934341;
    private const double S5 = 81.60099819260751;
    private const double S7 = -76.54965682048899;
    private const double S9 = 39.53581371042206;

    /// <summary>cos 2πt and sin 2πt.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (T Cos, T Sin) CosSin<T>(T turns)
        where T : unmanaged, ILanes<T> => (Cos(turns), Cos(turns - T.All(0.25)));

    // cos 2πt = sin 2π(1/4 − |t|), and |t| ≤ 1/2 once whole turns are gone.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Cos<T>(T turns)
        where T : unmanaged, ILanes<T> => SinOfQuarter(T.All(0.25) - T.Abs(turns - T.Round(turns)));

    /// <summary>sin 2πx for |x| ≤ 1/4.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T SinOfQuarter<T>(T x)
        where T : unmanaged, ILanes<T>
    {
        T square = x * x;
        if (T.IsSingle)
        {
            T few = T.MultiplyAdd(T.All(S9), square, T.All(S7));
            few = T.MultiplyAdd(few, square, T.All(S5));
            few = T.MultiplyAdd(few, square, T.All(S3));
            return x * T.MultiplyAdd(few, square, T.All(S1));
        }

        T sum = T.MultiplyAdd(T.All(C15), square, T.All(C13));
        sum = T.MultiplyAdd(sum, square, T.All(C11));
        sum = T.MultiplyAdd(sum, square, T.All(C9));
        sum = T.MultiplyAdd(sum, square, T.All(C7));
        sum = T.MultiplyAdd(sum, square, T.All(C5));
        sum = T.MultiplyAdd(sum, square, T.All(C3));
        return x * T.MultiplyAdd(sum, square, T.All(C1));
    }
}
