using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Radiation;

/// <summary>What a pair of source and observer needs of the free-space Green function, for as many observers as there are lanes.</summary>
/// <remarks>Eq. radiation (9).</remarks>
internal struct GreenTerms<T>
    where T : unmanaged, ILanes<T>
{
    /// <summary>Direction from source to observer, R̂.</summary>
    internal T X, Y, Z;

    /// <summary>Weight of the current itself.</summary>
    internal T DirectReal, DirectImaginary;

    /// <summary>Weight of the current's part along R̂.</summary>
    internal T RadialReal, RadialImaginary;

    /// <summary>Weight of R̂ × the dual current; the imaginary part with the opposite sign.</summary>
    internal T CurlReal, CurlMinusImaginary;

    /// <summary>From a source to observers. A method that fills what is there, because a constructor would fill a copy.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Set(in Vector source, T x, T y, T z, T perWavelength, T perRadian)
    {
        x -= T.Broadcast(source.X);
        y -= T.Broadcast(source.Y);
        z -= T.Broadcast(source.Z);
        (T distance, T inverse) = T.RootAndInverse(T.MultiplyAdd(x, x, T.MultiplyAdd(y, y, z * z)));
        X = x * inverse;
        Y = y * inverse;
        Z = z * inverse;

        T turns = distance * perWavelength;
        T q = inverse * perRadian; // 1/kR
        (T cos, T sin) = Turns.CosSin(turns);
        T a = sin * q; // a + jb = j e^{−jkR}/kR
        T b = cos * q;
        CurlReal = T.MultiplyAdd(-a, q, b);
        CurlMinusImaginary = T.MultiplyAdd(b, q, a);
        DirectReal = T.MultiplyAdd(q * q, a, -CurlMinusImaginary);
        DirectImaginary = T.MultiplyAdd(q * q, b, -CurlReal);
        RadialReal = T.MultiplyAdd(T.All(-3.0), DirectReal, -(a + a));
        RadialImaginary = T.MultiplyAdd(T.All(-3.0), DirectImaginary, -(b + b));
    }
}
