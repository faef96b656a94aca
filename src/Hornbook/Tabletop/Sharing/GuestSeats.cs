namespace Hornbook.Tabletop.Sharing;

/// <summary>How many look on.</summary>
/// <param name="most">No more are let in.</param>
public sealed class GuestSeats(int most)
{
    private int _taken;

    /// <summary>Raised when somebody has come or gone; on any thread.</summary>
    public event Action? Changed;

    public int Most { get; } = most;

    public int Taken => Volatile.Read(ref _taken);

    public bool AreFull => Taken >= Most;

    /// <summary>Takes a seat, to be given back with <see cref="Leave"/>; false where all are taken.</summary>
    public bool TryTake()
    {
        if (Interlocked.Increment(ref _taken) > Most)
        {
            Interlocked.Decrement(ref _taken);
            return false;
        }

        Changed?.Invoke();
        return true;
    }

    public void Leave()
    {
        Interlocked.Decrement(ref _taken);
        Changed?.Invoke();
    }
}
