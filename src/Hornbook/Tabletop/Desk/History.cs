using System.Collections.Immutable;

namespace Hornbook.Tabletop.Desk;

/// <summary>What was, what is and what was taken back. Immutable; nothing is ever forgotten except what was taken back before another step.</summary>
/// <typeparam name="T">What is remembered; itself immutable.</typeparam>
public sealed class History<T>
{
    private readonly ImmutableStack<T> _past;
    private readonly ImmutableStack<T> _future;

    public History(T first)
        : this([], first, [])
    {
    }

    private History(ImmutableStack<T> past, T present, ImmutableStack<T> future)
    {
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
    public History<T> Then(T next) => new(_past.Push(Present), next, []);

    /// <summary>The present step done differently; what went before stays.</summary>
    public History<T> Instead(T present) => new(_past, present, []);

    /// <summary>One step back; the same where there is none.</summary>
    public History<T> Undo() => CanUndo ? new(_past.Pop(out T before), before, _future.Push(Present)) : this;

    /// <summary>One step on again; the same where there is none.</summary>
    public History<T> Redo() => CanRedo ? new(_past.Push(Present), _future.Peek(), _future.Pop()) : this;
}
