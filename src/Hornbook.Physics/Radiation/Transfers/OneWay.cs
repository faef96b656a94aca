using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>The transfer from the samples of one body to those of another, by pairs of boxes.</summary>
/// <remarks>
/// First the coefficients of all pairs that go by nodes, then the observers, cut into parts each of which adds up all pairs in their order: whichever
/// thread does it, every sum is the same to the last bit.
/// </remarks>
internal sealed class OneWay
{
    // [ns]: below that, starting a second thread costs more than it brings.
    private const double WorthSharing = 5e5;
    private const int FewestParts = 32;

    // Samples that are sorted in one go.
    private const int Piece = 2048;

    private readonly SampleTree _sources;
    private readonly SampleTree _observers;
    private readonly BoxPair[] _coarse;
    private readonly int[] _nodesBefore;
    private readonly ObserverPart[] _parts;
    private readonly double _wavenumber;
    private readonly bool _isShared;
    private readonly bool _inFloats;
    private readonly FieldPart _part;

    // For what is summed directly; null where the sources lie in no plane.
    private readonly PlaneView? _plane;

    /// <summary>A transfer.</summary>
    /// <param name="sources">The body of the sources.</param>
    /// <param name="observers">The body of the observers.</param>
    /// <param name="pairs">A source box first, an observer box second; every sample with every other exactly once.</param>
    /// <param name="wavenumber">k [1/m].</param>
    /// <param name="cost">What it will take on one core [ns].</param>
    /// <param name="inFloats">Whether fields are summed in single precision: twice as many in a register, to a few parts in a hundred thousand.</param>
    /// <param name="part">What is asked for.</param>
    internal OneWay(SampleTree sources, SampleTree observers, IEnumerable<BoxPair> pairs, double wavenumber, double cost, bool inFloats = false, FieldPart part = FieldPart.Whole)
    {
        _part = part;
        (_sources, _observers, _wavenumber, _isShared, _inFloats) = (sources, observers, wavenumber, cost > WorthSharing, inFloats);
        ILookup<bool, BoxPair> byKind = pairs.ToLookup(p => p.IsCoarse);
        _coarse = [.. byKind[true]];
        _nodesBefore = new int[_coarse.Length + 1];
        for (int i = 0; i < _coarse.Length; i++)
        {
            _nodesBefore[i + 1] = _nodesBefore[i] + _coarse[i].SecondGrid!.Value.Count;
        }

        BoxPair[] direct = [.. byKind[false]];
        _plane = direct.Length > 0 ? PlaneView.Of(sources, observers) : null;
        int most = Math.Max(SampleTree.LeafCount, observers.Root.Count / FewestParts);
        _parts = [.. Parts(observers.Root, most).Select(box => ObserverPart.Of(box, _coarse, direct))];
    }

    /// <summary>Adds the field of currents.</summary>
    /// <exception cref="ArgumentException">There are not as many currents as samples, or less room than observers.</exception>
    internal void Add(CurrentSamples currents, Memory<FieldSample> fields)
    {
        if (currents.Count != _sources.Whole || fields.Length < _observers.Root.Count)
        {
            throw new ArgumentException(
                $"{currents.Count} currents and room for {fields.Length} fields; {_sources.Whole} and {_observers.Root.Count} are needed");
        }

        if (Vector512.IsHardwareAccelerated)
        {
            Add<Lanes512, SingleLanes512>(currents, fields);
        }
        else if (Vector256.IsHardwareAccelerated)
        {
            Add<Lanes256, SingleLanes256>(currents, fields);
        }
        else
        {
            Add<Lanes128, SingleLanes128>(currents, fields);
        }
    }

    /// <summary>The same with registers of a given width.</summary>
    internal void Add<T, TSingle>(CurrentSamples currents, Memory<FieldSample> fields)
        where T : unmanaged, ILanes<T>
        where TSingle : unmanaged, ILanes<TSingle>
    {
        if (_inFloats)
        {
            AddAll<T, TSingle>(currents, fields);
        }
        else
        {
            AddAll<T, T>(currents, fields);
        }
    }

    private void AddAll<T, TField>(CurrentSamples currents, Memory<FieldSample> fields)
        where T : unmanaged, ILanes<T>
        where TField : unmanaged, ILanes<TField>
    {
        int width = Channels<T>.Width, count = _sources.Root.Count;
        using Rented<ComplexVector> electric = new(count), dual = new(count);
        using Rented<double> channels = new(count * width), coefficients = new(_nodesBefore[^1] * width);
        (ComplexVector[] j, ComplexVector[] m, double[] all, double[] nodes) = (electric.Array, dual.Array, channels.Array, coefficients.Array);
        CurrentKind kind = currents.Kind;
        Pieces.Each((count + Piece - 1) / Piece, _isShared, piece => Sort<T>(currents, piece * Piece, Math.Min(count, (piece + 1) * Piece), j, m, all));
        Pieces.Each(_coarse.Length, _isShared, i => CoarseField<T, TField>.Fill(
            _coarse[i], _sources, _observers.Axes, all, kind, _wavenumber, nodes.AsSpan(_nodesBefore[i] * width, _coarse[i].SecondGrid!.Value.Count * width)));
        CurrentKind seen = _plane is null ? kind : PlaneView.Kind(electric.Span, dual.Span);
        Pieces.Each(_parts.Length, _isShared, i => AddPart<T, TField>(
            _parts[i], new CurrentSpans(_plane is null ? _sources.Points : _plane.Sources, j.AsSpan(0, count), m.AsSpan(0, count), seen), nodes, fields.Span));
    }

    private static IEnumerable<SampleBox> Parts(SampleBox box, int most) =>
        box.Count > most && box.Halves is (SampleBox low, SampleBox high) ? Parts(low, most).Concat(Parts(high, most)) : [box];

    /// <summary>Currents to the order of the tree: as the kernel wants them, seen from their plane where they have one, and as interpolation does.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Sort<T>(CurrentSamples currents, int first, int end, Span<ComplexVector> electric, Span<ComplexVector> dual, Span<double> channels)
        where T : unmanaged, ILanes<T>
    {
        ReadOnlySpan<int> order = _sources.Order;
        for (int i = first; i < end; i++)
        {
            electric[i] = currents.Electric[order[i]];
            dual[i] = currents.Dual[order[i]];
            Channels<T>.Write(electric[i], dual[i], channels[(i * Channels<T>.Width)..]);
            if (_plane is not null)
            {
                (electric[i], dual[i]) = (_plane.Axes.Own(electric[i]), _plane.Axes.Own(dual[i]));
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void AddPart<T, TField>(ObserverPart part, CurrentSpans currents, ReadOnlySpan<double> coefficients, Span<FieldSample> fields)
        where T : unmanaged, ILanes<T>
        where TField : unmanaged, ILanes<TField>
    {
        int width = Channels<T>.Width;
        using Rented<double> sums = new(part.Box.Count * width);
        sums.Span.Clear();
        foreach (int i in part.Coarse)
        {
            AddCoarse<T>(_coarse[i], part.Box, coefficients[(_nodesBefore[i] * width)..], sums.Span);
        }

        using Rented<FieldSample> direct = new(part.Box.Count);
        direct.Span.Clear();
        foreach (BoxPair pair in part.Direct)
        {
            AddDirect<TField>(currents.Slice(pair.First.First, pair.First.Count), part.Box, part.Box.Holds(pair.Second) ? pair.Second : part.Box, direct.Span);
        }

        for (int i = 0; i < part.Box.Count; i++)
        {
            (ComplexVector e, ComplexVector h) = Channels<T>.Read(sums.Span[(i * width)..]);
            ref FieldSample sum = ref fields[_observers.Order[part.Box.First + i]];
            sum = sum.Plus(new FieldSample(e, h)).Plus(_plane is null ? direct.Span[i] : _plane.Axes.Turn(direct.Span[i]));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void AddCoarse<T>(BoxPair pair, SampleBox part, ReadOnlySpan<double> coefficients, Span<double> sums)
        where T : unmanaged, ILanes<T>
    {
        SampleBox box = part.Holds(pair.Second) ? pair.Second : part;
        using Rented<double> cos = new(box.Count + T.Count), sin = new(box.Count + T.Count);
        PhaseSpans phases = new(cos.Span, sin.Span);
        PointPhases<T>.Fill(_observers, box, pair.First.Place, _wavenumber, phases);
        BoxPolynomials<T>.Spread(
            _observers, pair.Second, pair.SecondGrid!.Value, coefficients, box, phases, sums[((box.First - part.First) * Channels<T>.Width)..]);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void AddDirect<T>(CurrentSpans currents, SampleBox part, SampleBox box, Span<FieldSample> sums)
        where T : unmanaged, ILanes<T>
    {
        using Rented<FieldSample> room = new(box.Count);
        ReadOnlySpan<Vector> observers = _plane is null ? _observers.Points : _plane.Observers;
        FieldKernel<T>.Evaluate(currents, _wavenumber, observers.Slice(box.First, box.Count), room.Span, _part);
        for (int i = 0; i < box.Count; i++)
        {
            ref FieldSample sum = ref sums[box.First - part.First + i];
            sum = sum.Plus(room.Span[i]);
        }
    }
}
