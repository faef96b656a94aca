namespace Hornbook.Tabletop.Desk;

/// <summary>Something computed beside the page for the latest question only: an older one is stopped and its answer never shown.</summary>
/// <typeparam name="TQuestion">What is asked.</typeparam>
/// <typeparam name="TAnswer">What comes out.</typeparam>
/// <param name="compute">Answers; told the share done, and looks whether it shall stop.</param>
/// <param name="worker">On which it is computed; null for any thread.</param>
public sealed class Latest<TQuestion, TAnswer>(Func<TQuestion, IProgress<double>, CancellationToken, TAnswer> compute, TaskScheduler? worker = null) : IDisposable
    where TAnswer : class?
{
    private readonly Lock _gate = new();
    private CancellationTokenSource _asked = new();

    /// <summary>Raised when an answer is there, and when the share done has changed; on any thread.</summary>
    public event Action? Changed;

    /// <summary>The latest answer, which may be to an older question while <see cref="IsBusy"/>; null before the first.</summary>
    public TAnswer? Answer { get; private set; }

    public bool IsBusy { get; private set; }

    /// <summary>Whether somebody gave up the latest question before it was answered.</summary>
    public bool IsStopped { get; private set; }

    /// <summary>Share of the present question that is done, 0 to 1 [-].</summary>
    public double Done { get; private set; }

    /// <summary>Asks; what was asked before is stopped.</summary>
    /// <returns>Ends when this question is answered or overtaken.</returns>
    public Task Ask(TQuestion question)
    {
        CancellationTokenSource mine = new();
        CancellationTokenSource before;
        lock (_gate)
        {
            before = _asked;
            _asked = mine;
            IsBusy = true;
            IsStopped = false;
            Done = 0.0;
        }

        before.Cancel();
        before.Dispose();
        return Task.Factory.StartNew(() => Compute(question, mine), CancellationToken.None, TaskCreationOptions.DenyChildAttach, worker ?? TaskScheduler.Default);
    }

    /// <summary>Begins with an answer that is known from elsewhere.</summary>
    public void Know(TAnswer? answer)
    {
        lock (_gate)
        {
            Answer = answer;
        }
    }

    /// <summary>Gives the present question up; the answer before stays.</summary>
    public void Stop()
    {
        CancellationTokenSource before;
        lock (_gate)
        {
            before = _asked;
            _asked = new CancellationTokenSource();
            IsStopped = IsBusy;
            IsBusy = false;
        }

        before.Cancel();
        before.Dispose();
        Changed?.Invoke();
    }

    public void Dispose()
    {
        lock (_gate)
        {
            _asked.Cancel();
            _asked.Dispose();
        }
    }

    private void Compute(TQuestion question, CancellationTokenSource mine)
    {
        try
        {
            TAnswer answer = compute(question, new Share(share => Tell(mine, () => Done = share)), mine.Token);
            Tell(mine, () => (Answer, IsBusy) = (answer, false));
        }
        catch (Exception overtaken) when (overtaken is OperationCanceledException or ObjectDisposedException)
        {
            // A newer question is being answered.
        }
    }

    private void Tell(CancellationTokenSource mine, Action put)
    {
        lock (_gate)
        {
            if (mine != _asked)
            {
                return;
            }

            put();
        }

        Changed?.Invoke();
    }

    // Progress<T> would post to a thread of its own; here the order must hold.
    private sealed class Share(Action<double> put) : IProgress<double>
    {
        public void Report(double value) => put(value);
    }
}
