using System.Collections.Immutable;

namespace Hornbook.Tabletop.Desk;

/// <summary>What was, what is and what was taken back. Immutable; nothing is forgotten except what was taken back before another step, and what is asked to be.</summary>
/// <typeparam name="T">What is remembered; itself immutable.</typeparam>
public sealed class History<T>
{
    private readonly ImmutableStack<T> _past;
    private readonly ImmutableStack<T> _future;
    private readonly int _depth;

    public History(T first)
        : this([], first, [], 0)
    {
    }

    private History(ImmutableStack<T> past, T present, ImmutableStack<T> future, int depth)
    {
        _depth = depth;
        _past = past;
        _future = future;
        Present = present;
    }

    /// <summary>What is.</summary>
    public T Present { get; }

    public bool CanUndo => !_past.IsEmpty;

    public bool CanRedo => !_future.IsEmpty;

    /// <summary>What the next redo would bring; undefined where there is none.</summary>
    public T? Next => _future.IsEmpty ? default : _future.Peek();

    /// <summary>What the next undo would bring; undefined where there is none.</summary>
    public T? Before => _past.IsEmpty ? default : _past.Peek();

    /// <summary>One step on; what had been taken back is gone.</summary>
    public History<T> Then(T next) => new(_past.Push(Present), next, [], _depth + 1);

    /// <summary>The present step done differently; what went before stays.</summary>
    public History<T> Instead(T present) => new(_past, present, [], _depth);

    /// <summary>One step back; the same where there is none.</summary>
    public History<T> Undo() => CanUndo ? new(_past.Pop(out T before), before, _future.Push(Present), _depth - 1) : this;

    /// <summary>One step on again; the same where there is none.</summary>
    public History<T> Redo() => CanRedo ? new(_past.Push(Present), _future.Peek(), _future.Pop(), _depth + 1) : this;

    /// <summary>The same without the oldest steps, where there are more than twice as many as are to be kept.</summary>
    /// <param name="kept">How many steps back remain.</param>
    public History<T> Forgetting(int kept) => _depth / 2 < kept ? this : new([.. _past.Take(kept).Reverse()], Present, _future, kept);
}
