using System.Runtime.Intrinsics;

namespace Hornbook.Physics.Radiation;

/// <summary>2 doubles in a 128-bit register.</summary>
internal readonly struct Lanes128(Vector128<double> value) : ILanes<Lanes128>
{
    private readonly Vector128<double> _value = value;

    public static int Count => Vector128<double>.Count;

    public static bool IsSingle => false;

    public static Lanes128 All(double value) => new(Vector128.Create(value));

    public static Lanes128 Broadcast(double value) => All(value);

    public static Lanes128 Load(ReadOnlySpan<double> source) => new(Vector128.Create(source));

    public static Lanes128 MultiplyAdd(Lanes128 a, Lanes128 b, Lanes128 c) => new(Vector128.MultiplyAddEstimate(a._value, b._value, c._value));

    public static Lanes128 Sqrt(Lanes128 value) => new(Vector128.Sqrt(value._value));

    public static (Lanes128 Root, Lanes128 Inverse) RootAndInverse(Lanes128 value)
    {
        Lanes128 root = Sqrt(value);
        return (root, All(1.0) / root);
    }

    public static Lanes128 Round(Lanes128 value) => new(Vector128.Round(value._value));

    public static Lanes128 Abs(Lanes128 value) => new(Vector128.Abs(value._value));

    public void Store(Span<double> destination) => _value.CopyTo(destination);

    public static Lanes128 operator +(Lanes128 a, Lanes128 b) => new(a._value + b._value);

    public static Lanes128 operator -(Lanes128 a, Lanes128 b) => new(a._value - b._value);

    public static Lanes128 operator -(Lanes128 a) => new(-a._value);

    public static Lanes128 operator *(Lanes128 a, Lanes128 b) => new(a._value * b._value);

    public static Lanes128 operator /(Lanes128 a, Lanes128 b) => new(a._value / b._value);
}
