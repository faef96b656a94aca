using System.Runtime.Intrinsics;

namespace Hornbook.Physics.Radiation;

/// <summary>4 doubles in a 256-bit register.</summary>
internal readonly struct Lanes256(Vector256<double> value) : ILanes<Lanes256>
{
    private readonly Vector256<double> _value = value;

    public static int Count => Vector256<double>.Count;

    public static bool IsSingle => false;

    public static Lanes256 All(double value) => new(Vector256.Create(value));

    public static Lanes256 Broadcast(double value) => All(value);

    public static Lanes256 Load(ReadOnlySpan<double> source) => new(Vector256.Create(source));

    public static Lanes256 MultiplyAdd(Lanes256 a, Lanes256 b, Lanes256 c) => new(Vector256.MultiplyAddEstimate(a._value, b._value, c._value));

    public static Lanes256 Sqrt(Lanes256 value) => new(Vector256.Sqrt(value._value));

    public static (Lanes256 Root, Lanes256 Inverse) RootAndInverse(Lanes256 value)
    {
        Lanes256 root = Sqrt(value);
        return (root, All(1.0) / root);
    }

    public static Lanes256 Round(Lanes256 value) => new(Vector256.Round(value._value));

    public static Lanes256 Abs(Lanes256 value) => new(Vector256.Abs(value._value));

    public void Store(Span<double> destination) => _value.CopyTo(destination);

    public static Lanes256 operator +(Lanes256 a, Lanes256 b) => new(a._value + b._value);

    public static Lanes256 operator -(Lanes256 a, Lanes256 b) => new(a._value - b._value);

    public static Lanes256 operator -(Lanes256 a) => new(-a._value);

    public static Lanes256 operator *(Lanes256 a, Lanes256 b) => new(a._value * b._value);

    public static Lanes256 operator /(Lanes256 a, Lanes256 b) => new(a._value / b._value);
}
