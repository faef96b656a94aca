using Hornbook.Tabletop.Desk;

namespace Hornbook.Tabletop;

/// <summary>Pictures of the strength over the table and upright along it, for the latest bench; computed beside the page.</summary>
/// <param name="worker">On which they are computed; null for any thread.</param>
public sealed class StrengthSheets(TaskScheduler? worker = null) : IDisposable
{
    // Half a wavelength is 14 mm; at 8 mm the fringes between mirrors still show.
    private const double Step = 0.008;

    private readonly Latest<BenchMoment, StrengthSheetPair> _pair = new((moment, progress, cancellation) => StrengthSheetPair.Of(moment, Step, progress, cancellation), worker);
    private BenchMoment? _asked;

    /// <summary>Raised when other pictures are there; on any thread.</summary>
    public event Action? Changed
    {
        add => _pair.Changed += value;
        remove => _pair.Changed -= value;
    }

    /// <summary>Whether they are wanted.</summary>
    public bool IsShown { get; private set; }

    /// <summary>Share of the pictures that is done [-].</summary>
    public double Done => _pair.Done;

    /// <summary>Whether the bench has moved since the pictures were made.</summary>
    public bool IsBusy => IsShown && _pair.IsBusy;

    /// <summary>The pictures; null where they are not wanted or not there yet.</summary>
    public StrengthSheetPair? Pictures => IsShown ? _pair.Answer : null;

    /// <summary>Shows them, or hides them; those that are being computed are given up.</summary>
    public void Toggle()
    {
        IsShown = !IsShown;
        if (!IsShown)
        {
            _asked = _pair.IsBusy ? null : _asked;
            _pair.Stop();
        }
    }

    /// <summary>Asks for pictures of the bench as it is now, where they are wanted and not those that are there.</summary>
    public void Ask(BenchSession session)
    {
        ArgumentNullException.ThrowIfNull(session);
        BenchMoment moment = new(session.Scene, session.Source, session.Panels, session.Sheet.Headroom);
        if (IsShown && moment != _asked)
        {
            _asked = moment;
            _ = _pair.Ask(moment);
        }
    }

    public void Dispose() => _pair.Dispose();
}
