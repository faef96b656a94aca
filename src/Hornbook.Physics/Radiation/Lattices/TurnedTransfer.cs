using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Hornbook.Physics.Radiation.Transfers;

namespace Hornbook.Physics.Radiation.Lattices;

/// <summary>The field of currents on one lattice at the places of another that lies before it about the same axis, however rolled: as <see cref="RadiatedField"/>, to what floats lose, in half of the time.</summary>
/// <remarks>
/// A turn that takes both lattices into themselves takes every pair of places into another one with the same way between them: a quarter turn where both are square, else half a turn.
/// So the Green terms are worked out for one of four (two) observers, and serve all of them: the currents are turned the other way round instead. Eq. radiation (16).
/// Safe for use on several threads at once.
/// </remarks>
internal sealed class TurnedTransfer
{
    private const int Quarters = 4;

    // Observers, of those that are not turned, that one piece of work sees to; and pairs for which a second thread costs more than it brings.
    private const int Piece = 32;
    private const long WorthSharing = 400_000;

    // Of a step.
    private const double OffAxis = 1e-6;

    private readonly Frame _axes;
    private readonly Vector[] _sources;
    private readonly Vector[] _observers;
    private readonly Turn[] _turns;
    private readonly double _wavenumber;
    private readonly FieldPart _part;

    private TurnedTransfer(Frame axes, Vector[] sources, Vector[] observers, Turn[] turns, double wavenumber, FieldPart part) =>
        (_axes, _sources, _observers, _turns, _wavenumber, _part) = (axes, sources, observers, turns, wavenumber, part);

    /// <summary>A transfer between two lattices; null where they are not parallel or have no axis in common.</summary>
    /// <param name="sources">Where the currents are.</param>
    /// <param name="observers">Where their field is asked for; none of these places is one of the others.</param>
    /// <param name="wavenumber">k = 2π/λ [1/m]; finite, &gt; 0.</param>
    /// <param name="part">What is asked for.</param>
    internal static TurnedTransfer? Between(Lattice sources, Lattice observers, double wavenumber, FieldPart part = FieldPart.Whole)
    {
        Vector normal = sources.Normal, way = observers.Middle - sources.Middle;
        double along = Vector.Dot(normal, observers.Normal), step = Math.Min(sources.Column.Length, observers.Column.Length);
        if (Vector.Cross(normal, observers.Normal).Length > OffAxis || Vector.Cross(normal, way).Length > OffAxis * step)
        {
            return null;
        }

        Vector column = sources.Column * (1.0 / sources.Column.Length);
        Frame axes = new(sources.Middle, normal, column, Vector.Cross(normal, column));
        int each = sources.IsSquare && observers.IsSquare ? 1 : 2;
        int[] turns = [.. Enumerable.Range(0, Quarters / each).Select(i => i * each)];
        int Heard(int place, int quarters) => observers.Turned(place, along > 0.0 ? quarters : (Quarters - quarters) % Quarters);
        int[] first = [.. Enumerable.Range(0, observers.Count).Where(place => turns.All(quarters => Heard(place, quarters) >= place))];
        return new TurnedTransfer(
            axes,
            [.. Enumerable.Range(0, sources.Count).Select(place => axes.Own(sources.Place(place % sources.Columns, place / sources.Columns)))],
            [.. first.Select(place => axes.Own(observers.Place(place % observers.Columns, place / observers.Columns)))],
            [.. turns.Select(quarters => new Turn(
                quarters,
                [.. Enumerable.Range(0, sources.Count).Select(place => sources.Turned(place, quarters))],
                [.. first.Select(place => Heard(place, quarters))]))],
            wavenumber,
            part);
    }

    /// <summary>Adds E and H of currents at the places of the one lattice to the fields at the places of the other.</summary>
    internal void Add(CurrentSamples currents, Memory<FieldSample> fields)
    {
        if (Vector512.IsHardwareAccelerated)
        {
            Add<SingleLanes512>(currents, fields);
        }
        else if (Vector256.IsHardwareAccelerated)
        {
            Add<SingleLanes256>(currents, fields);
        }
        else
        {
            Add<SingleLanes128>(currents, fields);
        }
    }

    /// <summary>The same with registers of a given width.</summary>
    internal void Add<T>(CurrentSamples currents, Memory<FieldSample> fields)
        where T : unmanaged, ILanes<T>
    {
        int count = _sources.Length, all = count * _turns.Length;
        using Rented<ComplexVector> electric = new(all), dual = new(all);
        Spread(currents, electric.Span, dual.Span);
        CurrentKind kind = PlaneView.Kind(electric.Span, dual.Span);
        (ComplexVector[] j, ComplexVector[] m) = (electric.Array, dual.Array);
        Pieces.Each((_observers.Length + Piece - 1) / Piece, (long)count * _observers.Length > WorthSharing, piece =>
            AddPart<T>(new CurrentSpans(_sources, j.AsSpan(0, all), m.AsSpan(0, all), kind), piece * Piece, fields.Span));
    }

    /// <summary>What an observer hears that has been turned is what the first hears of currents turned back, turned.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Spread(CurrentSamples currents, Span<ComplexVector> electric, Span<ComplexVector> dual)
    {
        int count = _sources.Length;
        for (int i = 0; i < count; i++)
        {
            (electric[i], dual[i]) = (_axes.Own(currents.Electric[i]), _axes.Own(currents.Dual[i]));
        }

        for (int t = 1; t < _turns.Length; t++)
        {
            Turn turn = _turns[t];
            int back = Quarters - turn.Quarters;
            for (int i = 0; i < count; i++)
            {
                int from = turn.Sources[i];
                (electric[(t * count) + i], dual[(t * count) + i]) = (Turned(electric[from], back), Turned(dual[from], back));
            }
        }
    }

    private void AddPart<T>(CurrentSpans currents, int first, Span<FieldSample> fields)
        where T : unmanaged, ILanes<T>
    {
        int count = Math.Min(Piece, _observers.Length - first);
        using Rented<FieldSample> room = new(count * _turns.Length);
        FieldKernel<T>.Evaluate(currents, _wavenumber, _observers.AsSpan(first, count), room.Span, _part);
        for (int t = 0; t < _turns.Length; t++)
        {
            Turn turn = _turns[t];
            for (int i = 0; i < count; i++)
            {
                // What lies on the axis stays where it is, and hears itself once.
                if (t == 0 || turn.Observers[first + i] != _turns[0].Observers[first + i])
                {
                    FieldSample heard = room.Span[(t * count) + i];
                    ref FieldSample sum = ref fields[turn.Observers[first + i]];
                    sum = sum.Plus(_axes.Turn(new FieldSample(Turned(heard.Electric, turn.Quarters), Turned(heard.Magnetic, turn.Quarters))));
                }
            }
        }
    }

    private static ComplexVector Turned(in ComplexVector v, int quarters) => quarters switch
    {
        1 => new(v.X, -v.Z, v.Y),
        2 => new(v.X, -v.Y, -v.Z),
        3 => new(v.X, v.Z, -v.Y),
        _ => v,
    };

    /// <summary>A turn about the axis that takes both lattices into themselves.</summary>
    /// <param name="Quarters">How far.</param>
    /// <param name="Sources">Where each source goes.</param>
    /// <param name="Observers">Where each observer goes, of those that do not turn into one another.</param>
    private sealed record Turn(int Quarters, int[] Sources, int[] Observers);
}
