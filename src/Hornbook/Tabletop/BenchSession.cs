using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files.Editing;
using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Tabletop.Desk;
using Hornbook.Tabletop.Hands;
using Hornbook.Tabletop.Sheets;

namespace Hornbook.Tabletop;

/// <summary>One window's view of the desk: the bench as it lies there, with what this visitor has in hand, and what is read then.</summary>
public sealed class BenchSession : IDisposable
{
    // Two mouths cannot stand in one place; nearer than this the pose is refused [m].
    private const double LeastGap = 0.01;

    private readonly BenchDesk _desk;
    private readonly Following<Moment, ReadMoment?> _reader;
    private BenchStep _opened;
    private DeskState _state;
    private (BenchThing Thing, Pose Pose)? _hand;
    private ReadMoment _read;

    /// <param name="desk">Which this window shows.</param>
    /// <param name="advice">Of that desk.</param>
    /// <param name="readings">On which readings that take long are made; null for any thread.</param>
    /// <param name="maps">On which the strength of the wave is mapped; null for any thread.</param>
    public BenchSession(BenchDesk desk, BenchAdvice advice, TaskScheduler? readings = null, TaskScheduler? maps = null)
    {
        ArgumentNullException.ThrowIfNull(desk);
        ArgumentNullException.ThrowIfNull(advice);
        _desk = desk;
        Advice = advice;
        _opened = desk.Opened;
        _state = desk.Now;
        _read = Present.Read();
        _reader = new Following<Moment, ReadMoment?>(TryRead, read => OnOwnThread(() => Show(read)), readings);
        Sheet = SheetLayout.For(Plan);
        Strength = new StrengthSheets(maps);
        Strength.Changed += Tell;
        _desk.Changed += TakeFromDesk;
        _desk.HandMoved += LookAtHand;
        Advice.Changed += Tell;
    }

    /// <summary>Raised after anything that is shown has changed, on the window's own thread.</summary>
    public event Action? Changed;

    /// <summary>Brings what other windows and background work have to tell to the thread of this window.</summary>
    public Action<Action> OnOwnThread { get; set; } = static tell => tell();

    public BenchAdvice Advice { get; private set; }

    /// <summary>The bench as it lies on the desk, without what is in hand.</summary>
    public BenchPlan Plan => _state.Plan;

    public Scene Scene => _state.Scene;

    public History<BenchStep> History => _state.History;

    public SheetLayout Sheet { get; private set; }

    public SourceEnd Source => Held is { Thing.End: BenchEnd.Source } held ? Plan.Source with { Pose = held.Pose } : Plan.Source;

    public ReceiverEnd Receiver => Held is { Thing.End: BenchEnd.Receiver } held ? Plan.Receiver with { Pose = held.Pose } : Plan.Receiver;

    /// <summary>The panels at hand, those that lie aside included.</summary>
    public IReadOnlyList<BenchPanel> Panels => Held is { Thing.PanelName: { } name } held
        ? [.. Plan.Panels.Select(panel => panel.Name == name ? panel with { Pose = held.Pose } : panel)]
        : Plan.Panels;

    /// <summary>What is read now, with what is in hand.</summary>
    public Reading Reading => _read.Now;

    /// <summary>What was read before the present move, or before the last one when nothing is in hand; null where there was none.</summary>
    public Reading? Before => _read.Before;

    /// <summary>Whether <see cref="Reading"/> is still that of a moment ago, because the waves between panels are being solved.</summary>
    public bool IsReading => _reader.IsBusy;

    /// <summary>How this window likes to work.</summary>
    public Preferences Preferences { get; private set; } = Preferences.First;

    /// <summary>The ruler, where one lies on the sheet.</summary>
    public Ruler? Ruler { get; private set; }

    /// <summary>Whether the beams of both antennas are drawn.</summary>
    public bool ShowsBeams { get; private set; }

    /// <summary>The number whose explanation is open, and where the question came from; null where none is.</summary>
    public Asked? Asked { get; private set; }

    /// <summary>Whether something is being moved, here or in another window.</summary>
    public bool HasInHand => Held is not null;

    /// <summary>Whether panels can be added, copied and removed.</summary>
    public bool TakesPanels => _desk.Forbids([BenchChange.ToNothing("panels")]) is null;

    /// <summary>Why the last thing could not be done; null where it was.</summary>
    public string? Refusal { get; private set; }

    public bool StandsAsOpened => Source == _desk.Opened.Plan.Source && Receiver == _desk.Opened.Plan.Receiver;

    /// <summary>The strength of the wave over the table and upright along it, where it is shown.</summary>
    public StrengthSheets Strength { get; }

    /// <summary>Straight line between the centres of the two mouths [m].</summary>
    public double Distance => (Receiver.Pose.Position - Source.Pose.Position).Length;

    /// <summary>Where the far zone of the source's antenna begins, 2D²/λ from its mouth [m].</summary>
    public double NearZone => Scene.Source.FarDistance;

    public Pose PoseOf(BenchThing thing) => Held is { } held && held.Thing == thing ? held.Pose : PoseIn(Plan, thing);

    public string AntennaOf(BenchEnd end) => end == BenchEnd.Source ? Source.Antenna : Receiver.Antenna;

    /// <summary>Where a thing stood when the bench was opened; where it stands now if it was not there.</summary>
    public Pose OpenedPose(BenchThing thing) =>
        thing.PanelName is { } name && _desk.Opened.Plan.Panels.All(panel => panel.Name != name) ? PoseOf(thing) : PoseIn(_desk.Opened.Plan, thing);

    /// <summary>Holds a thing in a pose within the sheet, not yet put down; one that would bring the mouths together is refused.</summary>
    public void Place(BenchThing thing, Pose pose)
    {
        Pose held = Sheet.Held(pose);
        if (_desk.Forbids([]) is { } forbidden)
        {
            Refusal = forbidden;
            Changed?.Invoke();
            return;
        }

        if (held == PoseOf(thing) || (thing.End is { } end && (held.Position - PoseOf(Other(end)).Position).Length < LeastGap))
        {
            return;
        }

        _hand = (thing, held);
        Read();
        _desk.Hold(new HandOverDesk(thing, held, this));
    }

    /// <summary>Puts down what is in hand: one step that can be undone.</summary>
    /// <param name="run">What belongs together when it comes in quick succession, such as the presses of one key.</param>
    public void Release(string? run = null)
    {
        if (_hand is not { } hand || _desk.Opened != _opened)
        {
            _hand = null; // meanwhile another bench was opened: what was held is not on it
            _desk.LetGo(this);
            return;
        }

        string what = Words.Moving(hand.Thing, PoseIn(Plan, hand.Thing), hand.Pose);
        _hand = null;
        Do(what, BenchChange.ToPose(hand.Thing.Table, hand.Pose), run);
        _desk.LetGo(this);
    }

    /// <summary>Changes values of the bench as one step.</summary>
    public void Do(string what, IReadOnlyList<BenchChange> changes, string? run = null)
    {
        Refusal = _desk.Edit(what, changes, run);
        TakeFromDesk();
    }

    /// <summary>Takes another antenna of the bench into the hand of an end.</summary>
    public void Swap(BenchEnd end, string antenna)
    {
        string name = Words.Name(end).ToLowerInvariant();
        Do($"taking {antenna} for the {name}", [BenchChange.ToText($"{name}.antenna", antenna)]);
    }

    /// <summary>Takes other advice from now on: of another desk, when that is what is shown.</summary>
    public void TakeAdvice(BenchAdvice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        Advice.Changed -= Tell;
        Advice = advice;
        Advice.Changed += Tell;
        _ = Advice.CompleteAsync();
        Tell();
    }

    /// <summary>Shows the strength of the wave, or hides it.</summary>
    public void ToggleStrength()
    {
        Strength.Toggle();
        Strength.Ask(this);
        Tell();
    }

    /// <summary>Makes the one move that mends a finding.</summary>
    public void Mend(Mend mend) => Do(Words.Naming(mend.Move), Mending.Changes(mend));

    public void Prefer(Preferences preferences)
    {
        Preferences = preferences;
        Tell();
    }

    /// <summary>Opens the explanation of a number, or closes it.</summary>
    public void Ask(Asked? asked)
    {
        Asked = asked;
        Tell();
    }

    /// <summary>Lays the ruler from mouth to mouth, or takes it away.</summary>
    public void ToggleRuler()
    {
        Ruler = Ruler is null ? new Ruler(Source.Pose.Position, Receiver.Pose.Position) : null;
        Tell();
    }

    /// <summary>Shows how wide both beams are, or hides it.</summary>
    public void ToggleBeams()
    {
        ShowsBeams = !ShowsBeams;
        Tell();
    }

    /// <summary>Puts one end of the ruler somewhere over the table.</summary>
    public void Measure(RulerEnd end, Vector place)
    {
        Ruler = Ruler?.With(end, Sheet.Held(new Pose(place)).Position);
        Tell();
    }

    public void Undo()
    {
        Release();
        _desk.Undo();
    }

    public void Redo()
    {
        Release();
        _desk.Redo();
    }

    /// <summary>Puts both ends back to where they stood when the bench was opened.</summary>
    public void PutBack() => Do("putting back both ends",
    [
        .. BenchChange.ToPose(BenchEnd.Source, OpenedPose(BenchEnd.Source)),
        .. BenchChange.ToPose(BenchEnd.Receiver, OpenedPose(BenchEnd.Receiver)),
    ]);

    public void Dispose()
    {
        _desk.LetGo(this);
        _desk.Changed -= TakeFromDesk;
        _desk.HandMoved -= LookAtHand;
        Advice.Changed -= Tell;
        Strength.Changed -= Tell;
        Strength.Dispose();
    }

    // The own hand, or another window's.
    private (BenchThing Thing, Pose Pose)? Held => _hand ?? (_desk.InHand is { } other && other.By != this ? (other.Thing, other.Pose) : null);

    private static Pose PoseIn(BenchPlan plan, BenchThing thing) => thing.PanelName is { } name
        ? plan.Panels.First(panel => panel.Name == name).Pose
        : thing.End == BenchEnd.Source ? plan.Source.Pose : plan.Receiver.Pose;

    private static BenchEnd Other(BenchEnd end) => end == BenchEnd.Source ? BenchEnd.Receiver : BenchEnd.Source;

    private void TakeFromDesk() => OnOwnThread(() =>
    {
        if (_desk.Opened != _opened)
        {
            BeginAnew();
        }
        else if (_desk.Now != _state)
        {
            _state = _desk.Now;
            Sheet = Sheet.Grown(Plan);
        }

        if (_hand is { Thing.PanelName: { } name } && Plan.Panels.All(panel => panel.Name != name))
        {
            _hand = null;
            _desk.LetGo(this);
        }

        Read();
    });

    private void LookAtHand()
    {
        if (_desk.InHand?.By != this)
        {
            OnOwnThread(Read);
        }
    }

    // Another bench lies on the desk: nothing of what was in hand, measured or asked is about it.
    private void BeginAnew()
    {
        (_opened, _state, _hand) = (_desk.Opened, _desk.Now, null);
        (Ruler, Asked, Refusal) = (null, null, null);
        Sheet = SheetLayout.For(Plan);
    }

    private Moment Present => new(_state, Source, Receiver, Panels, HasInHand);

    // At once where it takes microseconds; beside the page, which is drawn meanwhile, where panels stand.
    private void Read()
    {
        if (_state.IsSlow)
        {
            _reader.Ask(Present);
        }
        else
        {
            _read = Present.Read();
        }

        Strength.Ask(this);
        Changed?.Invoke();
    }

    // A panel in a mouth, or another placement for which there is no answer: the page says so and goes on.
    private ReadMoment? TryRead(Moment moment)
    {
        try
        {
            return moment.Read();
        }
        catch (ArgumentException refusal)
        {
            Refusal = refusal.Message;
            return null;
        }
    }

    private void Show(ReadMoment? read)
    {
        _read = read ?? _read;
        Changed?.Invoke();
    }

    // What the desk has newer is taken, and shown with this, in a moment: shown without it, a thing just put down would jump back and forth.
    private void Tell() => OnOwnThread(() =>
    {
        if (_desk.Now == _state)
        {
            Changed?.Invoke();
        }
    });
}
