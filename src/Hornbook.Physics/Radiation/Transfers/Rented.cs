using System.Buffers;

namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>Room that is given back: what a transfer needs while it runs, without leaving work for the collector.</summary>
internal readonly ref struct Rented<T>
    where T : unmanaged
{
    /// <summary>Rents; what is in it is not cleared.</summary>
    internal Rented(int length)
    {
        Array = ArrayPool<T>.Shared.Rent(length);
        Span = Array.AsSpan(0, length);
    }

    /// <summary>As much as was asked for.</summary>
    internal Span<T> Span { get; }

    /// <summary>The same and perhaps more, to be handed to other threads.</summary>
    internal T[] Array { get; }

    /// <summary>Gives it back.</summary>
    public void Dispose() => ArrayPool<T>.Shared.Return(Array);
}
