using System.Runtime.Intrinsics;

namespace Hornbook.Physics.Radiation;

/// <summary>8 floats in a 256-bit register, behind the doubles that they are read from and written to.</summary>
internal readonly struct SingleLanes256(Vector256<float> value) : ILanes<SingleLanes256>
{
    private readonly Vector256<float> _value = value;

    public static int Count => Vector256<float>.Count;

    public static SingleLanes256 All(double value) => new(Vector256.Create((float)value));

    public static SingleLanes256 Load(ReadOnlySpan<double> source) =>
        new(Vector256.Narrow(Vector256.Create(source), Vector256.Create(source[Vector256<double>.Count..])));

    public static SingleLanes256 MultiplyAdd(SingleLanes256 a, SingleLanes256 b, SingleLanes256 c) => new(Vector256.MultiplyAddEstimate(a._value, b._value, c._value));

    public static SingleLanes256 Sqrt(SingleLanes256 value) => new(Vector256.Sqrt(value._value));

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
