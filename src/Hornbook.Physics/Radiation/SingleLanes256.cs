using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Hornbook.Physics.Radiation;

/// <summary>8 floats in a 256-bit register, behind the doubles that they are read from and written to.</summary>
internal readonly struct SingleLanes256(Vector256<float> value) : ILanes<SingleLanes256>
{
    private readonly Vector256<float> _value = value;

    public static int Count => Vector256<float>.Count;

    public static bool IsSingle => true;

    public static SingleLanes256 All(double value) => new(Vector256.Create((float)value));

    // As a vector: the machine's conversion of a single number waits for what the register held before, a turn of the loop ago.
    public static SingleLanes256 Broadcast(double value) => Sse2.IsSupported
        ? new(Vector256.Create(Sse2.ConvertToVector128Single(Vector128.CreateScalar(value)).ToScalar()))
        : All(value);

    public static SingleLanes256 Load(ReadOnlySpan<double> source) =>
        new(Vector256.Narrow(Vector256.Create(source), Vector256.Create(source[Vector256<double>.Count..])));

    public static SingleLanes256 MultiplyAdd(SingleLanes256 a, SingleLanes256 b, SingleLanes256 c) => new(Vector256.MultiplyAddEstimate(a._value, b._value, c._value));

    public static SingleLanes256 Sqrt(SingleLanes256 value) => new(Vector256.Sqrt(value._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (SingleLanes256 Root, SingleLanes256 Inverse) RootAndInverse(SingleLanes256 value)
    {
        if (Avx.IsSupported)
        {
            return RootEstimate.Refined(value, new SingleLanes256(Avx.ReciprocalSqrt(value._value)));
        }

        SingleLanes256 root = Sqrt(value);
        return (root, All(1.0) / root);
    }

    public static SingleLanes256 Round(SingleLanes256 value) => new(Vector256.Round(value._value));

    public static SingleLanes256 Abs(SingleLanes256 value) => new(Vector256.Abs(value._value));

    public void Store(Span<double> destination)
    {
        (Vector256<double> lower, Vector256<double> upper) = Vector256.Widen(_value);
        lower.CopyTo(destination);
        upper.CopyTo(destination[Vector256<double>.Count..]);
    }

    public static SingleLanes256 operator +(SingleLanes256 a, SingleLanes256 b) => new(a._value + b._value);

    public static SingleLanes256 operator -(SingleLanes256 a, SingleLanes256 b) => new(a._value - b._value);

    public static SingleLanes256 operator -(SingleLanes256 a) => new(-a._value);

    public static SingleLanes256 operator *(SingleLanes256 a, SingleLanes256 b) => new(a._value * b._value);

    public static SingleLanes256 operator /(SingleLanes256 a, SingleLanes256 b) => new(a._value / b._value);
}
