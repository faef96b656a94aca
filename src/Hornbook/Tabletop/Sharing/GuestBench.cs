using Hornbook.Bench.Files.Editing;
using Hornbook.Tabletop.Desk;
using Hornbook.Tabletop.Keeping;

namespace Hornbook.Tabletop.Sharing;

/// <summary>What a guest has before them: the presenter's bench to look on at, or a copy of their own. Neither leads to a file.</summary>
public sealed class GuestBench : IDisposable
{
    /// <summary>So often what the presenter does is shown at most: a key held down would otherwise draw every guest's page thirty times a second.</summary>
    private static readonly TimeSpan Pace = TimeSpan.FromMilliseconds(100);

    /// <summary>So many steps of a copy can be taken back.</summary>
    private const int MostSteps = 40;

    private readonly Workplace _presenter;
    private readonly GuestWork _work;
    private readonly TimeProvider _time;
    private BenchAdvice? _own;
    private long _shown;
    private int _follows;
    private bool _gone;

    public GuestBench(Workplace presenter, GuestWork work, TimeProvider time)
    {
        ArgumentNullException.ThrowIfNull(presenter);
        ArgumentNullException.ThrowIfNull(work);
        (_presenter, _work, _time) = (presenter, work, time);
        Desk = new BenchDesk(presenter.Desk) { Forbids = Forbidden, MostSteps = MostSteps };
        _presenter.Desk.Changed += Follow;
        _presenter.Desk.HandMoved += Follow;
    }

    public BenchDesk Desk { get; }

    /// <summary>Whether the presenter's bench is seen, and not a copy.</summary>
    public bool LooksOn { get; private set; } = true;

    /// <summary>What is to be said about what is seen.</summary>
    public BenchAdvice Advice => _own ?? _presenter.Advice;

    /// <summary>From now on what lies here is the guest's own.</summary>
    public void TakeCopy()
    {
        LooksOn = false;
        Desk.BeginAnew();
        _own ??= new BenchAdvice(Desk, _work.Worker, onlyWhereQuick: true, _presenter.Advice);
    }

    /// <summary>Back to the presenter's bench; the copy is gone.</summary>
    public void LookOn()
    {
        LooksOn = true;
        _own?.Dispose();
        _own = null;
        Desk.Mirror(_presenter.Desk);
    }

    public void Dispose()
    {
        _gone = true;
        _presenter.Desk.Changed -= Follow;
        _presenter.Desk.HandMoved -= Follow;
        _own?.Dispose();
    }

    private void Follow()
    {
        if (LooksOn && Interlocked.Exchange(ref _follows, 1) == 0)
        {
            _ = FollowAsync();
        }
    }

    // At once where nothing was shown for a while; else when it is time, and then the latest.
    private async Task FollowAsync()
    {
        TimeSpan since = _time.GetElapsedTime(_shown);
        if (_shown != 0 && since < Pace)
        {
            await Task.Delay(Pace - since, _time);
        }

        _shown = _time.GetTimestamp();
        Volatile.Write(ref _follows, 0);
        if (LooksOn && !_gone)
        {
            Desk.Mirror(_presenter.Desk);
        }
    }

    private string? Forbidden(IReadOnlyList<BenchChange> changes) => LooksOn
        ? "this is the presenter's bench; take a copy of your own, and move that"
        : changes.Any(change => change.IsOfTable) ? "panels are added and removed at the presenter's machine only; those at hand can be put in and moved" : null;
}
