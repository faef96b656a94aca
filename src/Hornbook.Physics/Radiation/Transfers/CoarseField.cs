using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>The field of one box of samples in another box, as coefficients of polynomials: sources to nodes, nodes to nodes, nodes to coefficients.</summary>
/// <remarks>Eq. radiation (12), from right to left.</remarks>
/// <typeparam name="T">Registers for what goes to and from the nodes.</typeparam>
/// <typeparam name="TField">Registers for what goes from node to node.</typeparam>
internal static class CoarseField<T, TField>
    where T : unmanaged, ILanes<T>
    where TField : unmanaged, ILanes<TField>
{
    /// <summary>Fills the coefficients.</summary>
    /// <param name="pair">Sources in its first box, observers in its second.</param>
    /// <param name="sources">The body of the sources.</param>
    /// <param name="observerAxes">The axes of the body of the observers.</param>
    /// <param name="currents">Six phasors for each source, as <see cref="Channels{T}"/>.</param>
    /// <param name="kind">What can be other than zero.</param>
    /// <param name="wavenumber">k [1/m].</param>
    /// <param name="coefficients">Filled: six phasors for each product of polynomials in the second box.</param>
    internal static void Fill(
        BoxPair pair, SampleTree sources, Frame observerAxes, ReadOnlySpan<double> currents, CurrentKind kind, double wavenumber, Span<double> coefficients)
    {
        BoxGrid from = pair.FirstGrid!.Value, to = pair.SecondGrid!.Value;
        using Rented<double> room = new(Math.Max(from.Count, to.Count) * Channels<T>.Width);
        using Rented<double> sums = new(from.Count * Channels<T>.Width);
        using Rented<Vector> nodes = new(from.Count), places = new(to.Count);
        using Rented<ComplexVector> electric = new(from.Count), dual = new(from.Count);
        using Rented<FieldSample> fields = new(to.Count);
        from.Place(pair.First, sources.Axes, nodes.Span);
        to.Place(pair.Second, observerAxes, places.Span);

        Gather(pair, sources, currents, wavenumber, sums.Span);
        GridTransform<T>.ToNodes(from, sums.Span, room.Span);
        TurnBack(nodes.Span, pair.Second.Place, wavenumber, sums.Span);
        for (int n = 0; n < from.Count; n++)
        {
            (electric.Span[n], dual.Span[n]) = Channels<T>.Read(sums.Span[(n * Channels<T>.Width)..]);
        }

        FieldKernel<TField>.Evaluate(new CurrentSpans(nodes.Span, electric.Span, dual.Span, kind), wavenumber, places.Span, fields.Span);
        for (int n = 0; n < to.Count; n++)
        {
            Channels<T>.Write(fields.Span[n].Electric, fields.Span[n].Magnetic, coefficients[(n * Channels<T>.Width)..]);
        }

        TurnBack(places.Span, pair.First.Place, wavenumber, coefficients);
        GridTransform<T>.ToPolynomials(to, coefficients, room.Span);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Gather(BoxPair pair, SampleTree sources, ReadOnlySpan<double> currents, double wavenumber, Span<double> sums)
    {
        using Rented<double> cos = new(pair.First.Count + T.Count), sin = new(pair.First.Count + T.Count);
        PhaseSpans phases = new(cos.Span, sin.Span);
        PointPhases<T>.Fill(sources, pair.First, pair.Second.Place, wavenumber, phases);
        BoxPolynomials<T>.Gather(sources, pair.First, pair.FirstGrid!.Value, currents, phases, sums);
    }

    /// <summary>Takes the phase e^{−jkR} to a centre out of what stands at the nodes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void TurnBack(ReadOnlySpan<Vector> nodes, Vector centre, double wavenumber, Span<double> channels)
    {
        using Rented<double> cos = new(nodes.Length + T.Count), sin = new(nodes.Length + T.Count);
        PointPhases<T>.Fill(nodes, centre, wavenumber, new PhaseSpans(cos.Span, sin.Span));
        for (int n = 0; n < nodes.Length; n++)
        {
            Channels<T>.Turn(channels.Slice(n * Channels<T>.Width, Channels<T>.Width), cos.Span[n], sin.Span[n]);
        }
    }
}
