namespace Hornbook.Tabletop.Performing;

/// <summary>The show as it runs: one for all windows, so that the wall and the phone in the presenter's hand are at the same item, and a window that is opened again too. Safe from any thread.</summary>
public sealed class Stage
{
    private readonly Lock _gate = new();
    private readonly TimeProvider _time;
    private readonly long _opened;

    public Stage(TimeProvider time)
    {
        ArgumentNullException.ThrowIfNull(time);
        _time = time;
        _opened = time.GetTimestamp();
    }

    /// <summary>Raised when another item or another state of the clock is there; on any thread.</summary>
    public event Action? Changed;

    /// <summary>The place of the present item, from 0.</summary>
    public int At { get; private set; }

    public ShowClock Clock { get; private set; } = new();

    /// <summary>Time on the stage's own clock [s].</summary>
    public double Now => _time.GetElapsedTime(_opened).TotalSeconds;

    /// <summary>Goes to the next item (+1) or back (−1), within a show of so many.</summary>
    public void Go(int by, int count) => Do(() =>
    {
        int to = Math.Clamp(At + by, 0, Math.Max(0, count - 1));
        if (to != At)
        {
            (At, Clock) = (to, Clock.AtNewItem(Now));
        }
    });

    /// <summary>Starts the clock, or lets it stand.</summary>
    public void ToggleClock() => Do(() => Clock = Clock.Toggled(Now));

    /// <summary>From the beginning, the clock at nothing.</summary>
    public void Begin() => Do(() => (At, Clock) = (0, new ShowClock()));

    private void Do(Action what)
    {
        lock (_gate)
        {
            what();
        }

        Changed?.Invoke();
    }
}
