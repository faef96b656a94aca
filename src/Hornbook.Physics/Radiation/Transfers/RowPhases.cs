using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>Phases in and out of samples, six phasors of each at once.</summary>
internal static class RowPhases<T>
    where T : unmanaged, ILanes<T>
{
    /// <summary>Samples times e^{−jkR}.</summary>
    /// <param name="from">Six phasors for each sample, as <see cref="Channels{T}"/>.</param>
    /// <param name="phases">cos kR and sin kR.</param>
    /// <param name="samples">How many samples.</param>
    /// <param name="to">Filled, in the same order.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Turn(ReadOnlySpan<double> from, PhaseSpans phases, int samples, Span<double> to)
    {
        int width = Channels<T>.Width, part = Channels<T>.Part;
        for (int s = 0; s < samples; s++)
        {
            T cos = T.All(phases.Cos[s]), sin = T.All(phases.Sin[s]);
            ReadOnlySpan<double> sample = from.Slice(s * width, width);
            Span<double> turned = to.Slice(s * width, width);
            for (int c = 0; c < part; c += T.Count)
            {
                T real = T.Load(sample[c..]), imaginary = T.Load(sample[(part + c)..]);
                T.MultiplyAdd(real, cos, imaginary * sin).Store(turned[c..]);
                T.MultiplyAdd(imaginary, cos, -(real * sin)).Store(turned[(part + c)..]);
            }
        }
    }

    /// <summary>Adds samples times e^{−jkR} to others.</summary>
    /// <inheritdoc cref="Turn"/>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void AddTurned(ReadOnlySpan<double> from, PhaseSpans phases, int samples, Span<double> to)
    {
        int width = Channels<T>.Width, part = Channels<T>.Part;
        for (int s = 0; s < samples; s++)
        {
            T cos = T.All(phases.Cos[s]), sin = T.All(phases.Sin[s]);
            ReadOnlySpan<double> sample = from.Slice(s * width, width);
            Span<double> sum = to.Slice(s * width, width);
            for (int c = 0; c < part; c += T.Count)
            {
                T real = T.Load(sample[c..]), imaginary = T.Load(sample[(part + c)..]);
                T.MultiplyAdd(real, cos, T.MultiplyAdd(imaginary, sin, T.Load(sum[c..]))).Store(sum[c..]);
                T.MultiplyAdd(imaginary, cos, T.MultiplyAdd(-real, sin, T.Load(sum[(part + c)..]))).Store(sum[(part + c)..]);
            }
        }
    }
}
