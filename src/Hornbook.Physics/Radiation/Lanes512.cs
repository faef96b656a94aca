using System.Runtime.Intrinsics;

namespace Hornbook.Physics.Radiation;

/// <summary>8 doubles in a 512-bit register.</summary>
internal readonly struct Lanes512(Vector512<double> value) : ILanes<Lanes512>
{
    private readonly Vector512<double> _value = value;

    public static int Count => Vector512<double>.Count;

    public static bool IsSingle => false;

    public static Lanes512 All(double value) => new(Vector512.Create(value));

    public static Lanes512 Broadcast(double value) => All(value);

    public static Lanes512 Load(ReadOnlySpan<double> source) => new(Vector512.Create(source));

    public static Lanes512 MultiplyAdd(Lanes512 a, Lanes512 b, Lanes512 c) => new(Vector512.MultiplyAddEstimate(a._value, b._value, c._value));

    public static Lanes512 Sqrt(Lanes512 value) => new(Vector512.Sqrt(value._value));

    public static (Lanes512 Root, Lanes512 Inverse) RootAndInverse(Lanes512 value)
    {
        Lanes512 root = Sqrt(value);
        return (root, All(1.0) / root);
    }

    public static Lanes512 Round(Lanes512 value) => new(Vector512.Round(value._value));

    public static Lanes512 Abs(Lanes512 value) => new(Vector512.Abs(value._value));

    public void Store(Span<double> destination) => _value.CopyTo(destination);

    public static Lanes512 operator +(Lanes512 a, Lanes512 b) => new(a._value + b._value);

    public static Lanes512 operator -(Lanes512 a, Lanes512 b) => new(a._value - b._value);

    public static Lanes512 operator -(Lanes512 a) => new(-a._value);

    public static Lanes512 operator *(Lanes512 a, Lanes512 b) => new(a._value * b._value);

    public static Lanes512 operator /(Lanes512 a, Lanes512 b) => new(a._value / b._value);
}
