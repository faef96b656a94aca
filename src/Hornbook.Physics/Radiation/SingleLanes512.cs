using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Hornbook.Physics.Radiation;

/// <summary>16 floats in a 512-bit register, behind the doubles that they are read from and written to.</summary>
internal readonly struct SingleLanes512(Vector512<float> value) : ILanes<SingleLanes512>
{
    private readonly Vector512<float> _value = value;

    public static int Count => Vector512<float>.Count;

    public static bool IsSingle => true;

    public static SingleLanes512 All(double value) => new(Vector512.Create((float)value));

    // As a vector: the machine's conversion of a single number waits for what the register held before, a turn of the loop ago.
    public static SingleLanes512 Broadcast(double value) => Sse2.IsSupported
        ? new(Vector512.Create(Sse2.ConvertToVector128Single(Vector128.CreateScalar(value)).ToScalar()))
        : All(value);

    public static SingleLanes512 Load(ReadOnlySpan<double> source) =>
        new(Vector512.Narrow(Vector512.Create(source), Vector512.Create(source[Vector512<double>.Count..])));

    public static SingleLanes512 MultiplyAdd(SingleLanes512 a, SingleLanes512 b, SingleLanes512 c) => new(Vector512.MultiplyAddEstimate(a._value, b._value, c._value));

    public static SingleLanes512 Sqrt(SingleLanes512 value) => new(Vector512.Sqrt(value._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (SingleLanes512 Root, SingleLanes512 Inverse) RootAndInverse(SingleLanes512 value)
    {
        if (Avx512F.IsSupported)
        {
            return RootEstimate.Refined(value, new SingleLanes512(Avx512F.ReciprocalSqrt14(value._value)));
        }

        SingleLanes512 root = Sqrt(value);
        return (root, All(1.0) / root);
    }

    public static SingleLanes512 Round(SingleLanes512 value) => new(Vector512.Round(value._value));

    public static SingleLanes512 Abs(SingleLanes512 value) => new(Vector512.Abs(value._value));

    public void Store(Span<double> destination)
    {
        (Vector512<double> lower, Vector512<double> upper) = Vector512.Widen(_value);
        lower.CopyTo(destination);
        upper.CopyTo(destination[Vector512<double>.Count..]);
    }

    public static SingleLanes512 operator +(SingleLanes512 a, SingleLanes512 b) => new(a._value + b._value);

    public static SingleLanes512 operator -(SingleLanes512 a, SingleLanes512 b) => new(a._value - b._value);

    public static SingleLanes512 operator -(SingleLanes512 a) => new(-a._value);

    public static SingleLanes512 operator *(SingleLanes512 a, SingleLanes512 b) => new(a._value * b._value);

    public static SingleLanes512 operator /(SingleLanes512 a, SingleLanes512 b) => new(a._value / b._value);
}
