using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Editing;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;

namespace Hornbook.Tabletop.Desk;

/// <summary>The bench that is worked on: one for all windows of this machine, so that each shows what the other does. Safe from any thread.</summary>
public sealed class BenchDesk
{
    // Presses of one key that follow each other within this are one step to be undone.
    private static readonly TimeSpan RunPause = TimeSpan.FromSeconds(1.0);

    private readonly Lock _gate = new();
    private readonly TimeProvider _time;

    public BenchDesk(BenchFile file, TimeProvider? time = null)
    {
        ArgumentNullException.ThrowIfNull(file);
        _time = time ?? TimeProvider.System;
        Opened = new BenchStep(file, "opening the bench", At: _time.GetTimestamp());
        Now = new DeskState(new History<BenchStep>(Opened), Scene.Of(Opened.Plan));
    }

    /// <summary>A desk with the same bench as another.</summary>
    public BenchDesk(BenchDesk other)
    {
        ArgumentNullException.ThrowIfNull(other);
        (_time, Opened, Now, InHand) = (other._time, other.Opened, other.Now, other.InHand);
    }

    /// <summary>Raised after each change, on the thread that made it.</summary>
    public event Action? Changed;

    /// <summary>Raised when something is held elsewhere than before, or by nobody any more, on the thread of who holds it.</summary>
    public event Action? HandMoved;

    /// <summary>The bench as it was when it was opened.</summary>
    public BenchStep Opened { get; private set; }

    public DeskState Now { get; private set; }

    /// <summary>What is held over the desk, for the other windows to see; of two hands the one that moved last. Null where nothing is.</summary>
    public HandOverDesk? InHand { get; private set; }

    /// <summary>So many steps can be taken back at least; those before are forgotten now and then. All, unless it is said.</summary>
    public int MostSteps { get; init; } = int.MaxValue;

    /// <summary>Why a change may not be made here; asked before each, and null where it may. Nothing is forbidden on the presenter's own desk.</summary>
    public Func<IReadOnlyList<BenchChange>, string?> Forbids { get; init; } = static _ => null;

    /// <summary>Shows the other windows what is held here.</summary>
    public void Hold(HandOverDesk hand)
    {
        lock (_gate)
        {
            InHand = hand;
        }

        HandMoved?.Invoke();
    }

    /// <summary>What was held here is put down, or dropped.</summary>
    public void LetGo(object by)
    {
        lock (_gate)
        {
            if (InHand?.By != by)
            {
                return;
            }

            InHand = null;
        }

        HandMoved?.Invoke();
    }

    /// <summary>Changes values of the bench as one step.</summary>
    /// <param name="what">What is done, as undo names it.</param>
    /// <param name="changes">Keys of the bench file and their new values; keys that stay as they are make no step.</param>
    /// <param name="run">What belongs together when it comes in quick succession; null for a step of its own.</param>
    /// <returns>Why it cannot be; null where it was done.</returns>
    public string? Edit(string what, IReadOnlyList<BenchChange> changes, string? run = null)
    {
        if (Forbids(changes) is { } forbidden)
        {
            return forbidden;
        }

        lock (_gate)
        {
            (BenchFile file, string? refusal) = Edited(Now.File, changes);
            if (refusal is not null)
            {
                return refusal;
            }

            if (file.Text == Now.File.Text)
            {
                return null;
            }

            BenchStep step = new(file, what, run, _time.GetTimestamp());
            Now = Now.With(Continues(step) ? Now.History.Instead(step) : Now.History.Then(step).Forgetting(MostSteps));
        }

        Changed?.Invoke();
        return null;
    }

    /// <summary>Puts another file in the place of this one as one step, such as one that an editor wrote.</summary>
    /// <param name="what">What is done, as undo names it.</param>
    /// <param name="file">The other file.</param>
    /// <param name="instead">What it takes the place of.</param>
    /// <returns>Whether it was done: not where the desk has something newer than <paramref name="instead"/>, nor with a file that cannot be worked with.</returns>
    public bool Replace(string what, BenchFile file, BenchFile instead)
    {
        if (Refusal(file) is not null)
        {
            return false;
        }

        lock (_gate)
        {
            if (Now.File != instead)
            {
                return false;
            }

            Now = Now.With(Now.History.Then(new BenchStep(file, what, At: _time.GetTimestamp())));
        }

        Changed?.Invoke();
        return true;
    }

    /// <summary>Lays another bench on the desk, with a history of its own.</summary>
    /// <param name="file">The other bench.</param>
    /// <param name="instead">What it takes the place of.</param>
    /// <param name="put">Done at the same moment, before anybody is told.</param>
    /// <returns>Whether it was done: not where the desk has something newer than <paramref name="instead"/>, nor with a file that cannot be worked with.</returns>
    public bool Open(BenchFile file, BenchFile instead, Action put)
    {
        ArgumentNullException.ThrowIfNull(put);
        if (Refusal(file) is not null)
        {
            return false;
        }

        BenchStep opened = new(file, "opening the bench", At: _time.GetTimestamp());
        Scene scene = Scene.Of(opened.Plan);
        lock (_gate)
        {
            if (Now.File != instead)
            {
                return false;
            }

            Lay(opened, scene);
            put();
        }

        Changed?.Invoke();
        return true;
    }

    /// <summary>Lays what another desk has on this one, with its history and what is held over it, so that both show the same.</summary>
    public void Mirror(BenchDesk other)
    {
        ArgumentNullException.ThrowIfNull(other);
        lock (_gate)
        {
            (Opened, Now, InHand) = (other.Opened, other.Now, other.InHand);
        }

        Changed?.Invoke();
    }

    /// <summary>Begins a history of its own with what lies here.</summary>
    public void BeginAnew()
    {
        lock (_gate)
        {
            Lay(new BenchStep(Now.File, "taking a copy", At: _time.GetTimestamp()), Now.Scene);
        }

        Changed?.Invoke();
    }

    public void Undo() => Travel(history => history.Undo());

    public void Redo() => Travel(history => history.Redo());

    /// <summary>Why a file cannot be worked with; null where it can.</summary>
    public static string? Refusal(BenchFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return file.Plan switch
        {
            null => $"{file.Problems[0].Read}; {file.Problems[0].Fits}; {file.Problems[0].Type}",
            BenchPlan plan when !Scene.CanRead(plan) => "a guide carries no wave at this frequency",
            _ => null,
        };
    }

    private static (BenchFile File, string? Refusal) Edited(BenchFile file, IReadOnlyList<BenchChange> changes)
    {
        try
        {
            BenchFile edited = file.Edit(changes);
            return (edited, Refusal(edited));
        }
        catch (ArgumentException gone)
        {
            // What was shown when the hand reached for it is no longer in the file.
            return (file, gone.Message);
        }
    }

    private void Lay(BenchStep opened, Scene scene)
    {
        Opened = opened;
        InHand = null;
        Now = new DeskState(new History<BenchStep>(opened), scene);
    }

    private void Travel(Func<History<BenchStep>, History<BenchStep>> way)
    {
        if (Forbids([]) is not null)
        {
            return;
        }

        lock (_gate)
        {
            History<BenchStep> there = way(Now.History);
            if (there == Now.History)
            {
                return;
            }

            Now = Now.With(there);
        }

        Changed?.Invoke();
    }

    private bool Continues(BenchStep step) => step.Run is not null && step.Run == Now.History.Present.Run
        && _time.GetElapsedTime(Now.History.Present.At, step.At) < RunPause;
}
