using Hornbook.Bench.Findings;
using Hornbook.Bench.Readings;
using Hornbook.Physics.Exposure;

namespace Hornbook.Tabletop.Desk;

/// <summary>What is to be said about the bench as it stands on the desk; computed beside the page, which never waits for it.</summary>
public sealed class BenchAdvice : IDisposable
{
    private readonly BenchDesk _desk;
    private readonly Lock _gate = new();
    private readonly bool _onlyWhereQuick;
    private readonly Latest<Scene, IReadOnlyList<Finding>> _findings;
    private readonly Latest<KeepOutQuestion, KeepOutShape?> _keepOut;
    private KeepOutQuestion? _keepOutAsked;
    private Scene? _lookedOver;
    private Task _working = Task.CompletedTask;

    /// <param name="desk">The bench to look over.</param>
    /// <param name="worker">On which it is looked over; null for any thread.</param>
    /// <param name="onlyWhereQuick">Whether a bench with panels, which takes seconds of all cores, is not looked over.</param>
    /// <param name="known">What is known already of a desk on which the same may lie; null where nothing is.</param>
    public BenchAdvice(BenchDesk desk, TaskScheduler? worker = null, bool onlyWhereQuick = false, BenchAdvice? known = null)
    {
        ArgumentNullException.ThrowIfNull(desk);
        (_desk, _onlyWhereQuick) = (desk, onlyWhereQuick);
        _findings = new(BenchFindings.Of, worker);
        _keepOut = new((question, _, _) => question.Answer(), worker);
        _desk.Changed += Ask;
        _findings.Changed += Tell;
        _keepOut.Changed += Tell;
        if (known is not null)
        {
            TakeOver(known);
        }
    }

    /// <summary>Raised when there is something new to show; on any thread.</summary>
    public event Action? Changed;

    /// <summary>What to know of the bench, worst first; while <see cref="IsLooking"/> that of the bench before. Null before the first.</summary>
    public IReadOnlyList<Finding>? Findings => _findings.Answer;

    /// <summary>Whether the bench is looked over at all.</summary>
    public bool Looks => !_onlyWhereQuick || _desk.Now.Plan is { Table.Panel: null, Panels.Count: 0 };

    /// <summary>Whether the bench has changed since <see cref="Findings"/> and is being looked over.</summary>
    public bool IsLooking => _findings.IsBusy;

    /// <summary>Share of that which is done [-].</summary>
    public double Looked => _findings.Done;

    /// <summary>Whether somebody stopped the looking over.</summary>
    public bool IsStopped => _findings.IsStopped;

    /// <summary>The limit behind <see cref="KeepOut"/>; null where none is known at the frequency.</summary>
    public ExposureLimit? Limit => KeepOutQuestion.Of(_desk.Now.Scene).Limit;

    /// <summary>How far to stay away from the source; null while it is computed (an old one could be too small), and where no limit is known.</summary>
    public KeepOutShape? KeepOut => _keepOut.IsBusy ? null : _keepOut.Answer;

    /// <summary>Begins to look, at the first page; ends when all is there.</summary>
    public Task CompleteAsync()
    {
        Ask();
        return _working;
    }

    /// <summary>Stops looking the bench over; how far to keep away is computed all the same.</summary>
    public void StopLooking() => _findings.Stop();

    /// <summary>Looks it over again after a stop.</summary>
    public void LookAgain() => _ = _findings.Ask(_desk.Now.Scene);

    public void Dispose()
    {
        _desk.Changed -= Ask;
        _findings.Dispose();
        _keepOut.Dispose();
    }

    // What is not there yet is asked for here.
    private void TakeOver(BenchAdvice known)
    {
        lock (known._gate)
        {
            if (known._keepOutAsked is { } asked && !known._keepOut.IsBusy)
            {
                _keepOutAsked = asked;
                _keepOut.Know(known._keepOut.Answer);
            }

            if (Looks && known._lookedOver == _desk.Now.Scene && known is { IsLooking: false, Findings: { } findings })
            {
                _lookedOver = _desk.Now.Scene;
                _findings.Know(findings);
            }
        }
    }

    private void Ask()
    {
        lock (_gate)
        {
            Scene scene = _desk.Now.Scene;
            if (scene == _lookedOver)
            {
                return;
            }

            _lookedOver = scene;
            KeepOutQuestion keepOut = KeepOutQuestion.Of(scene);
            Task distance = keepOut == _keepOutAsked ? _working : _keepOut.Ask(keepOut);
            _keepOutAsked = keepOut;
            _working = Looks ? Task.WhenAll(distance, _findings.Ask(scene)) : distance;
        }

        Tell();
    }

    private void Tell() => Changed?.Invoke();
}
