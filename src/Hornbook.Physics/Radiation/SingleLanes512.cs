using System.Runtime.Intrinsics;

namespace Hornbook.Physics.Radiation;

/// <summary>16 floats in a 512-bit register, behind the doubles that they are read from and written to.</summary>
internal readonly struct SingleLanes512(Vector512<float> value) : ILanes<SingleLanes512>
{
    private readonly Vector512<float> _value = value;

    public static int Count => Vector512<float>.Count;

    public static SingleLanes512 All(double value) => new(Vector512.Create((float)value));

    public static SingleLanes512 Load(ReadOnlySpan<double> source) =>
        new(Vector512.Narrow(Vector512.Create(source), Vector512.Create(source[Vector512<double>.Count..])));

    public static SingleLanes512 MultiplyAdd(SingleLanes512 a, SingleLanes512 b, SingleLanes512 c) => new(Vector512.MultiplyAddEstimate(a._value, b._value, c._value));

    public static SingleLanes512 Sqrt(SingleLanes512 value) => new(Vector512.Sqrt(value._value));

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
