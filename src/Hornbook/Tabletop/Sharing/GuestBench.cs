using Hornbook.Bench.Files.Editing;
using Hornbook.Tabletop.Desk;
using Hornbook.Tabletop.Keeping;

namespace Hornbook.Tabletop.Sharing;

/// <summary>What a guest has before them: the presenter's bench to look on at, or a copy of their own. Neither leads to a file.</summary>
public sealed class GuestBench : IDisposable
{
    private readonly Workplace _presenter;
    private readonly GuestWork _work;
    private BenchAdvice? _own;

    public GuestBench(Workplace presenter, GuestWork work)
    {
        ArgumentNullException.ThrowIfNull(presenter);
        ArgumentNullException.ThrowIfNull(work);
        (_presenter, _work) = (presenter, work);
        Desk = new BenchDesk(presenter.Desk) { Forbids = Forbidden };
        _presenter.Desk.Changed += Follow;
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
        _own ??= new BenchAdvice(Desk, _work.Worker);
    }

    /// <summary>Back to the presenter's bench; the copy is gone.</summary>
    public void LookOn()
    {
        LooksOn = true;
        _own?.Dispose();
        _own = null;
        Follow();
    }

    public void Dispose()
    {
        _presenter.Desk.Changed -= Follow;
        _own?.Dispose();
    }

    private void Follow()
    {
        if (LooksOn)
        {
            Desk.Mirror(_presenter.Desk);
        }
    }

    private string? Forbidden(IReadOnlyList<BenchChange> changes) => LooksOn
        ? "this is the presenter's bench; take a copy of your own, and move that"
        : changes.Any(change => change.IsOfTable) ? "panels are added and removed at the presenter's machine only; those at hand can be put in and moved" : null;
}
