using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Hornbook.Physics.Radiation;

/// <summary>4 floats in a 128-bit register, behind the doubles that they are read from and written to.</summary>
internal readonly struct SingleLanes128(Vector128<float> value) : ILanes<SingleLanes128>
{
    private readonly Vector128<float> _value = value;

    public static int Count => Vector128<float>.Count;

    public static bool IsSingle => true;

    public static SingleLanes128 All(double value) => new(Vector128.Create((float)value));

    // As a vector: the machine's conversion of a single number waits for what the register held before, a turn of the loop ago.
    public static SingleLanes128 Broadcast(double value) => Sse2.IsSupported
        ? new(Vector128.Create(Sse2.ConvertToVector128Single(Vector128.CreateScalar(value)).ToScalar()))
        : All(value);

    public static SingleLanes128 Load(ReadOnlySpan<double> source) =>
        new(Vector128.Narrow(Vector128.Create(source), Vector128.Create(source[Vector128<double>.Count..])));

    public static SingleLanes128 MultiplyAdd(SingleLanes128 a, SingleLanes128 b, SingleLanes128 c) => new(Vector128.MultiplyAddEstimate(a._value, b._value, c._value));

    public static SingleLanes128 Sqrt(SingleLanes128 value) => new(Vector128.Sqrt(value._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (SingleLanes128 Root, SingleLanes128 Inverse) RootAndInverse(SingleLanes128 value)
    {
        SingleLanes128 root = Sqrt(value);
        return (root, All(1.0) / root);
    }

    public static SingleLanes128 Round(SingleLanes128 value) => new(Vector128.Round(value._value));

    public static SingleLanes128 Abs(SingleLanes128 value) => new(Vector128.Abs(value._value));

    public void Store(Span<double> destination)
    {
        (Vector128<double> lower, Vector128<double> upper) = Vector128.Widen(_value);
        lower.CopyTo(destination);
        upper.CopyTo(destination[Vector128<double>.Count..]);
    }

    public static SingleLanes128 operator +(SingleLanes128 a, SingleLanes128 b) => new(a._value + b._value);

    public static SingleLanes128 operator -(SingleLanes128 a, SingleLanes128 b) => new(a._value - b._value);

    public static SingleLanes128 operator -(SingleLanes128 a) => new(-a._value);

    public static SingleLanes128 operator *(SingleLanes128 a, SingleLanes128 b) => new(a._value * b._value);

    public static SingleLanes128 operator /(SingleLanes128 a, SingleLanes128 b) => new(a._value / b._value);
}
