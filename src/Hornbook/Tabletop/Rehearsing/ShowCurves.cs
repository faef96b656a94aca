using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files;
using Hornbook.Bench.Programmes;
using Hornbook.Bench.Readings;
using Hornbook.Tabletop.Desk;

namespace Hornbook.Tabletop.Rehearsing;

/// <summary>The predicted curves of the show, computed one after the other beside the page and kept as long as the bench stands the same. Safe from any thread.</summary>
public sealed class ShowCurves : IDisposable
{
    private readonly BenchDesk _desk;
    private readonly Lock _gate = new();
    private readonly Dictionary<Demonstration, Prediction> _known = [];
    private readonly Dictionary<Demonstration, string> _refused = [];
    private BenchFile _of;
    private CancellationTokenSource? _running;
    private Task _work = Task.CompletedTask;

    public ShowCurves(BenchDesk desk)
    {
        ArgumentNullException.ThrowIfNull(desk);
        _desk = desk;
        _of = desk.Now.File;
        _desk.Changed += TakeFromDesk;
    }

    /// <summary>Raised when a curve is there, and when there is more of one; on any thread.</summary>
    public event Action? Changed;

    /// <summary>The name of the demonstration that is computed now; null where none is.</summary>
    public string? Computing { get; private set; }

    /// <summary>Share of it that is done [-].</summary>
    public double Done { get; private set; }

    /// <summary>Whether somebody stopped it before all were there.</summary>
    public bool IsStopped { get; private set; }

    /// <summary>The prediction of a demonstration; null where it is not computed yet.</summary>
    public Prediction? Of(Demonstration shown)
    {
        lock (_gate)
        {
            return _known.TryGetValue(Key(shown), out Prediction? known) ? known with { Demonstration = shown } : null;
        }
    }

    /// <summary>Why a demonstration has no curve on this bench; null where it has one, or may get one.</summary>
    public string? Refusal(Demonstration shown)
    {
        lock (_gate)
        {
            return _refused.GetValueOrDefault(Key(shown));
        }
    }

    /// <summary>Computes what is missing of the show; does nothing where that is on its way.</summary>
    /// <returns>Ends when all is there, or it was stopped.</returns>
    public Task CompleteAsync()
    {
        lock (_gate)
        {
            IsStopped = false;
            if (_work.IsCompleted && Missing() is not null)
            {
                _work = Task.Run(ComputeAll, CancellationToken.None);
            }

            return _work;
        }
    }

    /// <summary>Stops; what is there stays.</summary>
    public void Stop()
    {
        lock (_gate)
        {
            IsStopped = _running is not null;
            _running?.Cancel();
        }
    }

    public void Dispose()
    {
        _desk.Changed -= TakeFromDesk;
        Stop();
    }

    // How it is shown makes no difference to what is computed.
    private static Demonstration Key(Demonstration shown) => shown with { Showing = Showing.Usual };

    private Demonstration? Missing() =>
        Show.Of(_desk.Now.Plan).FirstOrDefault(shown => !_known.ContainsKey(Key(shown)) && !_refused.ContainsKey(Key(shown)));

    private void TakeFromDesk()
    {
        lock (_gate)
        {
            BenchFile now = _desk.Now.File;
            if (!now.StandsAs(_of))
            {
                _known.Clear();
                _refused.Clear();
                _running?.Cancel(); // and the next one is that of the bench as it stands now
            }

            _of = now;
        }

        Changed?.Invoke();
    }

    private void ComputeAll()
    {
        while (Next() is var (scene, shown, running))
        {
            Changed?.Invoke();
            using (running)
            {
                Compute(scene, shown, running.Token);
            }
        }

        Changed?.Invoke();
    }

    private void Compute(Scene scene, Demonstration shown, CancellationToken cancellation)
    {
        try
        {
            Prediction prediction = Prediction.Of(scene, shown, new Told(Tell), cancellation);
            Put(() => _known[Key(shown)] = prediction);
        }
        catch (OperationCanceledException)
        {
            // The bench stands otherwise now, or somebody has seen enough.
        }
        catch (ArgumentException refusal)
        {
            Put(() => _refused[Key(shown)] = refusal.Message); // a panel in a mouth, or another placement for which there is no answer
        }

        void Put(Action put)
        {
            lock (_gate)
            {
                if (!cancellation.IsCancellationRequested)
                {
                    put();
                }
            }
        }
    }

    private (Scene Scene, Demonstration Shown, CancellationTokenSource Running)? Next()
    {
        lock (_gate)
        {
            Demonstration? missing = IsStopped ? null : Missing();
            (Computing, Done) = (missing?.Name, 0.0);
            _running = missing is null ? null : new CancellationTokenSource();
            return missing is null ? null : (_desk.Now.Scene, missing, _running!);
        }
    }

    private void Tell(double share)
    {
        // Every hundredth is enough for an eye.
        if (share - Done >= 0.01 || share >= 1.0)
        {
            Done = share;
            Changed?.Invoke();
        }
    }

    private sealed class Told(Action<double> tell) : IProgress<double>
    {
        public void Report(double value) => tell(value);
    }
}
