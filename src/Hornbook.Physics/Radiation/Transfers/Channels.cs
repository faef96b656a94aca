using System.Numerics;

namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>Six phasors, of J and jM/η or of E and H, side by side: their real parts, then their imaginary parts, each in whole registers.</summary>
/// <remarks>A phase is then taken in or out without a shuffle, and interpolation treats all six alike.</remarks>
internal static class Channels<T>
    where T : unmanaged, ILanes<T>
{
    private const int Phasors = 6;

    /// <summary>Doubles for the real parts.</summary>
    internal static int Part => (Phasors + T.Count - 1) / T.Count * T.Count;

    /// <summary>Doubles for all.</summary>
    internal static int Width => 2 * Part;

    /// <summary>Writes two vectors.</summary>
    internal static void Write(in ComplexVector a, in ComplexVector b, Span<double> channels)
    {
        int part = Part;
        channels = channels[..(2 * part)];
        channels.Clear();
        Span<double> real = channels[..part], imaginary = channels[part..];
        (real[0], real[1], real[2]) = (a.X.Real, a.Y.Real, a.Z.Real);
        (real[3], real[4], real[5]) = (b.X.Real, b.Y.Real, b.Z.Real);
        (imaginary[0], imaginary[1], imaginary[2]) = (a.X.Imaginary, a.Y.Imaginary, a.Z.Imaginary);
        (imaginary[3], imaginary[4], imaginary[5]) = (b.X.Imaginary, b.Y.Imaginary, b.Z.Imaginary);
    }

    /// <summary>Reads two vectors.</summary>
    internal static (ComplexVector A, ComplexVector B) Read(ReadOnlySpan<double> channels)
    {
        int part = Part;
        ReadOnlySpan<double> real = channels[..part], imaginary = channels.Slice(part, part);
        return (
            new ComplexVector(new Complex(real[0], imaginary[0]), new Complex(real[1], imaginary[1]), new Complex(real[2], imaginary[2])),
            new ComplexVector(new Complex(real[3], imaginary[3]), new Complex(real[4], imaginary[4]), new Complex(real[5], imaginary[5])));
    }

    /// <summary>Multiplies six phasors by e^{+jφ}.</summary>
    internal static void Turn(Span<double> channels, double cos, double sin)
    {
        T c = T.All(cos), s = T.All(sin);
        int part = Part;
        for (int i = 0; i < part; i += T.Count)
        {
            T real = T.Load(channels[i..]), imaginary = T.Load(channels[(part + i)..]);
            T.MultiplyAdd(real, c, -(imaginary * s)).Store(channels[i..]);
            T.MultiplyAdd(imaginary, c, real * s).Store(channels[(part + i)..]);
        }
    }
}
